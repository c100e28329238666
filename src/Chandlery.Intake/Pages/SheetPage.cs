namespace Chandlery.Intake.Pages;

/// <summary>A page as words and ruled lines.</summary>
/// <param name="Number">Page number, from 1.</param>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
/// <param name="Words">Words, in no order that means anything.</param>
/// <param name="Rules">Ruled lines.</param>
public sealed record SheetPage(int Number, double WidthMm, double HeightMm, IReadOnlyList<Word> Words, IReadOnlyList<RuledLine> Rules)
{
    /// <summary>What the reader must know of the page as a whole, such as text on it that cannot be seen and was not read.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>Why no value from this page is certain, such as that it was read from a picture; null when nothing speaks against them.</summary>
    public string? ValueDoubt { get; init; }

    /// <summary>Where lines go on beyond the page's edge, so that nobody sees all of them.</summary>
    public IReadOnlyList<Box> GoOnBeyondEdge { get; init; } = [];

    /// <summary>True when the page is a picture.</summary>
    public bool IsPicture { get; init; }

    /// <summary>True when nobody has read the picture yet.</summary>
    public bool IsUnread => IsPicture && Words.Count == 0;
}
