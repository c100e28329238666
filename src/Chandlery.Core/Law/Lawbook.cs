namespace Chandlery.Core.Law;

/// <summary>A language that documents can be printed in.</summary>
/// <param name="Code">ISO 639-1 code.</param>
/// <param name="Name">Its own name.</param>
/// <param name="Source">Where the texts come from.</param>
/// <param name="Checked">How they were checked.</param>
/// <param name="IsVerified">True when the hazard statements were compared with an independent text.</param>
/// <param name="Official">The law's statements by code, verbatim.</param>
/// <param name="Printed">Statements as printed: completed and chosen where the law leaves dots or a choice.</param>
/// <param name="Words">The documents' own words.</param>
/// <param name="Safety">Candle-safety messages by key.</param>
/// <param name="Caution">The caution at the foot of a card.</param>
public sealed record Language(
    string Code,
    string Name,
    string Source,
    string Checked,
    bool IsVerified,
    IReadOnlyDictionary<string, string> Official,
    IReadOnlyDictionary<string, string> Printed,
    IReadOnlyDictionary<string, string> Words,
    IReadOnlyDictionary<string, string> Safety,
    string Caution
)
{
    /// <summary>The statement as printed; null when this language lacks it.</summary>
    public string? Statement(string code) => Printed.GetValueOrDefault(code) ?? Official.GetValueOrDefault(code);
}

/// <summary>Figures of the burn-safety advice; common practice, no law.</summary>
/// <param name="IndoorDistanceCm">Distance between candles indoors, centimetres.</param>
/// <param name="OutdoorDistanceCm">Distance between candles outdoors, centimetres.</param>
/// <param name="FirstBurnHoursPerCm">Hours of the first burn per centimetre of diameter per wick row.</param>
/// <param name="LongestBurnHours">Longest burn, hours.</param>
/// <param name="RemainingWaxMm">Wax left when burning must stop, millimetres.</param>
public sealed record BurnAdvice(
    double IndoorDistanceCm,
    double OutdoorDistanceCm,
    double FirstBurnHoursPerCm,
    double LongestBurnHours,
    double RemainingWaxMm
);

/// <summary>All that the program knows of law and language.</summary>
/// <param name="Vocabulary">Hazard categories.</param>
/// <param name="Editions">The law, by place.</param>
/// <param name="Places">Places of sale.</param>
/// <param name="Substances">Harmonised classes and known substances.</param>
/// <param name="Languages">Languages.</param>
/// <param name="Burning">Burn-safety figures.</param>
/// <param name="SheetWords">Headings and words of safety data sheets, by language.</param>
/// <param name="SheetAdvice">Texts of safety data sheets that follow from no computation.</param>
public sealed record Lawbook(
    HazardVocabulary Vocabulary,
    IReadOnlyList<Edition> Editions,
    IReadOnlyList<Place> Places,
    SubstanceList Substances,
    IReadOnlyList<Language> Languages,
    BurnAdvice Burning,
    IReadOnlyList<SheetWords> SheetWords,
    IReadOnlyList<SheetAdvice> SheetAdvice
)
{
    /// <summary>The place with this country code, or null.</summary>
    public Place? FindPlace(string code) => Places.FirstOrDefault(p => p.Code == code);

    /// <summary>The edition with this id.</summary>
    public Edition Edition(string id) => Editions.First(e => e.Id == id);

    /// <summary>The language with this code, or null.</summary>
    public Language? FindLanguage(string code) => Languages.FirstOrDefault(l => l.Code == code);
}
