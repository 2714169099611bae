-- What a person says of a photo: where the pipe runs, how deep the stud stands.
ALTER TABLE photo ADD COLUMN note TEXT NOT NULL DEFAULT '';
