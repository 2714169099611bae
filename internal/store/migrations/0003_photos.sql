-- The same picture is kept once, however many places it is pinned to.
CREATE TABLE picture (
  sha   BLOB PRIMARY KEY CHECK (length(sha) = 32),
  bytes BLOB NOT NULL
) STRICT;

CREATE TABLE photo (
  id     INTEGER PRIMARY KEY AUTOINCREMENT,
  room   INTEGER NOT NULL REFERENCES room (id) ON DELETE CASCADE,
  face   TEXT NOT NULL,
  sha    BLOB NOT NULL REFERENCES picture (sha),
  media  TEXT NOT NULL,
  size   INTEGER NOT NULL,
  width  INTEGER NOT NULL,
  height INTEGER NOT NULL,
  author TEXT NOT NULL,
  at     INTEGER NOT NULL,
  UNIQUE (room, face, sha)
) STRICT;

CREATE INDEX photo_sha ON photo (sha);

CREATE TRIGGER picture_unpinned AFTER DELETE ON photo
WHEN NOT EXISTS (SELECT 1 FROM photo WHERE sha = old.sha)
BEGIN
  DELETE FROM picture WHERE sha = old.sha;
END;
