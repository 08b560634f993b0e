"""What a keeper asks before publishing: how sound a catalogue is, and what an edition does to stations."""
