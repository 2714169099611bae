-- Every tick and untick, in the order of arrival. What stands for an address is its last row that is not late.
CREATE TABLE tick (
  id      INTEGER PRIMARY KEY AUTOINCREMENT,
  room    INTEGER NOT NULL REFERENCES room (id) ON DELETE CASCADE,
  address TEXT NOT NULL,
  outline TEXT NOT NULL,
  ticked  INTEGER NOT NULL CHECK (ticked IN (0, 1)),
  late    INTEGER NOT NULL CHECK (late IN (0, 1)), -- the same client had already said something newer
  client  TEXT NOT NULL,
  seq     INTEGER NOT NULL,
  author  TEXT NOT NULL,
  at      INTEGER NOT NULL
) STRICT;

CREATE INDEX tick_address ON tick (room, address, id);
