using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>What an edition of the law says on safety data sheets.</summary>
public sealed record SafetySheetRules
{
    /// <summary>Name of the format.</summary>
    public required string Format { get; init; }

    /// <summary>Where it stands.</summary>
    public required Citation FormatClause { get; init; }

    /// <summary>Subsections that the format does not have.</summary>
    public required IReadOnlyList<string> Without { get; init; }

    /// <summary>English headings where they differ from REACH Annex II.</summary>
    public required IReadOnlyDictionary<string, string> Headings { get; init; }

    /// <summary>The duty for a classified candle.</summary>
    public required DutyClause Classified { get; init; }

    /// <summary>What holds where it is sold to the public.</summary>
    public required DutyClause ForPublic { get; init; }

    /// <summary>The duty for an unclassified candle with certain substances.</summary>
    public required DutyClause OnRequest { get; init; }

    /// <summary>What holds otherwise.</summary>
    public required DutyClause NotDue { get; init; }

    /// <summary>Why no note on the sheet goes on the label; null where there is no such rule.</summary>
    public required DutyClause? LabelNote { get; init; }

    /// <summary>Those substances and shares.</summary>
    public required IReadOnlyList<ShareRow> OnRequestFrom { get; init; }

    /// <summary>From which share section 3 names a substance.</summary>
    public required IReadOnlyList<ShareRow> NamedFrom { get; init; }

    /// <summary>Whether section 1.4 needs a number.</summary>
    public required Requirement EmergencyNumber { get; init; }

    /// <summary>Substances of concern that it tells of.</summary>
    public required ConcerningRules Concerning { get; init; }

    /// <summary>Where it stands in which language the sheet must be.</summary>
    public required Citation LanguageClause { get; init; }

    /// <summary>Sentences that only this law has.</summary>
    public required IReadOnlyList<SheetSentence> Sentences { get; init; }

    /// <summary>Abbreviations that only this law has.</summary>
    public required IReadOnlyList<SheetSentence> Abbreviations { get; init; }

    /// <summary>How it travels.</summary>
    public required TransportRules Transport { get; init; }
}
