-- Times are milliseconds since 1970-01-01 UTC. Texts of documents and operations are bytes, kept as they came.

CREATE TABLE room (
  id      INTEGER PRIMARY KEY AUTOINCREMENT, -- a number is never given twice, so an old link never shows another room
  name    TEXT NOT NULL,                     -- as the head's document says
  head    INTEGER NOT NULL,                  -- the last revision's number
  created INTEGER NOT NULL,
  changed INTEGER NOT NULL,
  binned  INTEGER                            -- since when it is in the bin
) STRICT;

-- The revision a change stands on is always the one before it.
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

-- What has been delivered, so that the same request is not carried out twice.
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
