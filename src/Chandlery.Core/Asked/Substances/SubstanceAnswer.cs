namespace Chandlery.Core.Asked.Substances;

/// <summary>What the law says of a substance on a day.</summary>
public sealed record SubstanceAnswer
{
    /// <summary>Index number of its entry; null where the table has none.</summary>
    public required string? Index { get; init; }

    /// <summary>CAS numbers of the entry, or of the substance that was asked for.</summary>
    public required IReadOnlyList<string> Cas { get; init; }

    /// <summary>EC numbers.</summary>
    public required IReadOnlyList<string> Ec { get; init; }

    /// <summary>Names: the law's, and those of the trade.</summary>
    public required IReadOnlyList<string> Names { get; init; }

    /// <summary>What the table prints in brackets after its name: the form that the entry speaks of; none for most.</summary>
    public required IReadOnlyList<string> Conditions { get; init; }

    /// <summary>Its harmonised classes; none where there is no entry.</summary>
    public required IReadOnlyList<ClassAnswer> Classes { get; init; }

    /// <summary>Specific concentration limits, as the table prints them.</summary>
    public required IReadOnlyList<string> Limits { get; init; }

    /// <summary>M-factors of the two aquatic classes.</summary>
    public required FactorAnswer MFactors { get; init; }

    /// <summary>Acute toxicity estimates, as the table prints them.</summary>
    public required IReadOnlyList<string> Ate { get; init; }

    /// <summary>The table's notes with their meaning.</summary>
    public required IReadOnlyList<NoteAnswer> Notes { get; init; }

    /// <summary>The act that says so, with its number; null where there is no entry.</summary>
    public required string? Act { get; init; }

    /// <summary>The act's CELEX number; null where there is no entry.</summary>
    public required string? Celex { get; init; }

    /// <summary>The day from which it applies; null where there is no entry.</summary>
    public required DateOnly? AppliesFrom { get; init; }

    /// <summary>What it said before, the newest first.</summary>
    public required IReadOnlyList<VersionAnswer> Before { get; init; }

    /// <summary>What is to come: law that applies later, and drafts.</summary>
    public required IReadOnlyList<VersionAnswer> Pending { get; init; }

    /// <summary>What applies in the Union already and was not taken over in the place, the newest first.</summary>
    public required IReadOnlyList<VersionAnswer> Elsewhere { get; init; }

    /// <summary>True where harmonised classes bind in the place; false where they are only evidence there.</summary>
    public required bool Binds { get; init; }

    /// <summary>What holds it: oils, waxes, extras, candles of a folder; none where no folder was named.</summary>
    public required IReadOnlyList<HolderAnswer> HeldBy { get; init; }

    /// <summary>What must be told of it under the place's law.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }
}
