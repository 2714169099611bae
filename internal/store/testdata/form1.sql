-- A database of form 1, as the first step of migrations made it, with two rooms. Never edited: people may have one.
CREATE TABLE room (
  id      INTEGER PRIMARY KEY AUTOINCREMENT, -- a number is never given twice, so an old link never shows another room
  name    TEXT NOT NULL,                     -- as the head's document says
  head    INTEGER NOT NULL,                  -- the last revision's number
  created INTEGER NOT NULL,
  changed INTEGER NOT NULL,
  binned  INTEGER                            -- since when it is in the bin
) STRICT;
CREATE TABLE revision (
  room   INTEGER NOT NULL REFERENCES room (id) ON DELETE CASCADE,
  number INTEGER NOT NULL CHECK (number > 0),
  seen   INTEGER NOT NULL CHECK (seen >= 0 AND seen < number), -- what its author had before their eyes
  undoes INTEGER CHECK (undoes > 1 AND undoes < number),
  text   BLOB NOT NULL,
  ops    BLOB NOT NULL,
  author TEXT NOT NULL,
  at     INTEGER NOT NULL,
  PRIMARY KEY (room, number),
  FOREIGN KEY (room, undoes) REFERENCES revision (room, number)
) STRICT;
CREATE INDEX revision_undoes ON revision (room, undoes, number) WHERE undoes IS NOT NULL;
CREATE TABLE delivery (
  scope  INTEGER NOT NULL, -- the room it was sent to; 0: it made a room
  client TEXT NOT NULL,
  seq    INTEGER NOT NULL,
  kind   TEXT NOT NULL,
  room   INTEGER NOT NULL REFERENCES room (id) ON DELETE CASCADE,
  result INTEGER NOT NULL, -- revision, tick or photo
  print  BLOB NOT NULL,    -- SHA-256 of the request, or nothing
  PRIMARY KEY (scope, client, seq)
) STRICT, WITHOUT ROWID;
CREATE INDEX delivery_room ON delivery (room);
INSERT INTO room VALUES (1, 'Boathouse washroom', 3, 1772366400000, 1772366520000, NULL);
INSERT INTO room VALUES (2, 'Attic bath', 1, 1772366400000, 1772366400000, 1772370000000);
INSERT INTO revision VALUES (1, 1, 0, NULL, CAST('name: Boathouse' AS BLOB), CAST('[]' AS BLOB), 'owner', 1772366400000);
INSERT INTO revision VALUES (1, 2, 1, NULL, CAST('name: Boathouse washroom' AS BLOB), CAST('[{"set":"name"}]' AS BLOB), 'editor', 1772366460000);
INSERT INTO revision VALUES (1, 3, 1, 2, CAST('name: Boathouse' AS BLOB), CAST('[{"set":"name"}]' AS BLOB), 'editor', 1772366520000);
INSERT INTO revision VALUES (2, 1, 0, NULL, CAST('name: Attic bath' AS BLOB), CAST('[]' AS BLOB), 'owner', 1772366400000);
INSERT INTO delivery VALUES (1, 'phone', 4, 'revision', 1, 2, X'');
PRAGMA application_id = 0x64727966;
PRAGMA user_version = 1;
