using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>What an edition of the law says on safety data sheets.</summary>
/// <param name="Format">Name of the format.</param>
/// <param name="FormatClause">Where it stands.</param>
/// <param name="Without">Subsections that the format does not have.</param>
/// <param name="Headings">English headings where they differ from REACH Annex II.</param>
/// <param name="Classified">The duty for a classified candle.</param>
/// <param name="ForPublic">What holds where it is sold to the public.</param>
/// <param name="OnRequest">The duty for an unclassified candle with certain substances.</param>
/// <param name="NotDue">What holds otherwise.</param>
/// <param name="LabelNote">Why no note on the sheet goes on the label; null where there is no such rule.</param>
/// <param name="OnRequestFrom">Those substances and shares.</param>
/// <param name="NamedFrom">From which share section 3 names a substance.</param>
/// <param name="EmergencyNumber">Whether section 1.4 needs a number.</param>
/// <param name="Concerning">Substances of concern that it tells of.</param>
/// <param name="LanguageClause">Where it stands in which language the sheet must be.</param>
/// <param name="Sentences">Sentences that only this law has.</param>
/// <param name="Abbreviations">Abbreviations that only this law has.</param>
/// <param name="Transport">How it travels.</param>
public sealed record SafetySheetRules(
    string Format,
    Citation FormatClause,
    IReadOnlyList<string> Without,
    IReadOnlyDictionary<string, string> Headings,
    DutyClause Classified,
    DutyClause ForPublic,
    DutyClause OnRequest,
    DutyClause NotDue,
    DutyClause? LabelNote,
    IReadOnlyList<ShareRow> OnRequestFrom,
    IReadOnlyList<ShareRow> NamedFrom,
    Requirement EmergencyNumber,
    ConcerningRules Concerning,
    Citation LanguageClause,
    IReadOnlyList<SheetSentence> Sentences,
    IReadOnlyList<SheetSentence> Abbreviations,
    TransportRules Transport
);
