namespace Chandlery.Register;

/// <summary>
/// The different texts of the columns that are searched by a part of a text. A store that keeps them apart answers at once which there
/// are; of another the index is stepped through.
/// </summary>
internal static class KnownTexts
{
    /// <summary>The table of a store that keeps them apart.</summary>
    public const string Table = "known_text";

    /// <summary>The columns, with their tables.</summary>
    public static IReadOnlyList<(string Table, string Column)> Columns { get; } =
    [("used_oil", "name"), ("used_oil", "document"), ("held_substance", "name")];

    /// <summary>By which name a column stands in the table.</summary>
    public static string PlaceOf(string table, string column) => $"{table}.{column}";

    /// <summary>The texts of an entry by their columns' names.</summary>
    public static IEnumerable<(string Place, string Text)> Of(RegisterContent content) =>
        content
            .Oils.SelectMany(o => new[] { (PlaceOf("used_oil", "name"), o.Name), (PlaceOf("used_oil", "document"), o.Document) })
            .Concat(content.Substances.Select(s => (PlaceOf("held_substance", "name"), s.Name)));

    /// <summary>
    /// The beginning of a question for the different texts of a column, called step(value): the index is stepped through from one value
    /// to the next, so a million rows with a thousand names cost a thousand steps.
    /// </summary>
    /// <param name="table">The table.</param>
    /// <param name="column">Its column.</param>
    /// <param name="first">Which come first, as a condition with its WHERE; empty for all.</param>
    public static string Steps(string table, string column, string first = "") =>
        $"""
            WITH RECURSIVE step(value) AS (
                SELECT min({column}) FROM {table}{first}
                UNION ALL
                SELECT (SELECT min({column}) FROM {table} WHERE {column} > step.value) FROM step WHERE step.value IS NOT NULL)
            """;
}
