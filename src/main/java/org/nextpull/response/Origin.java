package org.nextpull.response;

/**
 * Where a pull came from.
 *
 * @param source name of the file, table or capture
 * @param firstLine its first line there, from 1
 * @param candidate its number among the candidates of that source, from 1, refused ones included
 */
public record Origin(String source, long firstLine, int candidate) {}
