namespace Chandlery.Workbench.Forms;

/// <summary>A field as the page draws it.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means, a sentence.</param>
/// <param name="Kind">text, texts, number, day, flag, choice, group, groups, map or either.</param>
/// <param name="Needed">True when the declaration is wrong without it.</param>
public sealed record FormField(string Key, string About, string Kind, bool Needed)
{
    /// <summary>What might stand there; null for none.</summary>
    public string? Example { get; init; }

    /// <summary>Words to choose among; empty for a free value.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>Fields of a group, of each of a list of groups, of what stands under each name of a map, or the ways of what can be written in more than one.</summary>
    public IReadOnlyList<FormField> Fields { get; init; } = [];

    /// <summary>Kind of declaration that it names; null for none.</summary>
    public string? Names { get; init; }

    /// <summary>What the files that it names end with; empty when it names none.</summary>
    public IReadOnlyList<string> Endings { get; init; } = [];

    /// <summary>True for a count.</summary>
    public bool IsWhole { get; init; }
}
