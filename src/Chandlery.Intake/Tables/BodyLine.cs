using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>A line of a table's body, cut into its columns.</summary>
/// <param name="Line">The whole line.</param>
/// <param name="Cells">The words in each column; null where there are none.</param>
/// <param name="Spans">True when it runs across columns, as notes under a row do; its words are in no cell then.</param>
/// <param name="IsNote">True when it says nothing but a factor, limit or estimate: it belongs to the row above it, and no row begins with it.</param>
internal sealed record BodyLine(TextLine Line, IReadOnlyList<TextLine?> Cells, bool Spans, bool IsNote)
{
    /// <summary>A word that stands in two columns at once; null when none does.</summary>
    public string? OnBorder { get; init; }

    /// <summary>The heading of several rows that stood above it and is in no line any more; null when none did.</summary>
    public string? Heading { get; init; }
}
