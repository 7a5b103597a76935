package chock.assess.facts;

import java.util.List;
import java.util.Map;

/**
 * What became of the checks of which nothing was written.
 *
 * @param found for each check what it wants and lacks, and its outcome
 */
public record NothingWritten(Map<Required, List<Object>> found) { }
