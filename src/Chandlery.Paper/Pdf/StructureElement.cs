namespace Chandlery.Paper.Pdf;

/// <summary>A part of a page for those who hear it (ISO 32000-1, 14.7.2).</summary>
/// <param name="type">The standard structure type.</param>
internal sealed class StructureElement(string type)
{
    private readonly List<StructureElement> parts = [];
    private readonly List<(StructureElement? Part, int Mark)> kids = [];

    /// <summary>The standard structure type.</summary>
    public string Type => type;

    /// <summary>Language, or null for that of what it stands in.</summary>
    public string? Language { get; init; }

    /// <summary>What a drawing shows, in words.</summary>
    public string? Alternative { get; init; }

    /// <summary>Entries of its attributes, each a dictionary; empty for none.</summary>
    public string Attributes { get; init; } = "";

    /// <summary>Its parts.</summary>
    public IReadOnlyList<StructureElement> Parts => parts;

    /// <summary>Parts and numbers of marked contents, in the order of reading.</summary>
    public IReadOnlyList<(StructureElement? Part, int Mark)> Kids => kids;

    /// <summary>Adds a part.</summary>
    public void Add(StructureElement part)
    {
        parts.Add(part);
        kids.Add((part, 0));
    }

    /// <summary>Adds marked contents.</summary>
    public void Add(int mark) => kids.Add((null, mark));

    /// <summary>Takes back the part that was added last.</summary>
    public void TakeBackLast()
    {
        parts.RemoveAt(parts.Count - 1);
        kids.RemoveAt(kids.Count - 1);
    }
}
