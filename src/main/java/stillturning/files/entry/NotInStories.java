package stillturning.files.entry;

/** An entry on which no story rests, so that its values are no assumptions of one. */
interface NotInStories {}
