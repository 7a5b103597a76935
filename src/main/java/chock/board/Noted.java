package chock.board;

/** What the journal keeps besides a change: who does it and when is known there. */
record Noted(String action, String detail) { }
