using System.Text.RegularExpressions;

namespace Chandlery.Tests.Law.Foreign;

/// <summary>By what the law of each edition is told in a text, and which of them no text for a place may hold.</summary>
internal static partial class LawSigns
{
    private const string Union =
        @"\bCLP\b|\bREACH\b|\((?:EU|EC|EG|CE|UE)\)|European Union|Europäische Union|Union européenne|Unione europea|ECHA|Directive 76/211";

    // What an English text calls otherwise in Great Britain and Switzerland, which name the Union's law as the source of their own.
    private const string UnionSeenFromBritain =
        @"(?<!GB )\bCLP\b|(?<!UK )\bREACH\b|(?<!retained Regulation )\((?:EU|EC)\)|European Union|ECHA|Directive 76/211";

    private const string UnionSeenFromSwitzerland =
        @"(?<!EU-)\bCLP\b|(?<!EU-)\bREACH\b|\((?:EU|EC|EG|CE|UE)\)|European Union|Europäische Union|Union européenne|Unione europea|ECHA|Directive 76/211";

    // Statements that the Union added to those of the GHS; they are told as such only outside.
    private const string UnionStatements = @"\bEUH[0-9]";

    /// <summary>Signs of each law, and a citation of it that must be found wherever it is foreign. The GHS is the base of several laws.</summary>
    public static readonly IReadOnlyDictionary<string, (string Signs, string Sample)> Of = new Dictionary<string, (string, string)>
    {
        ["eu-clp"] = (Union, "Regulation (EC) No 1272/2008"),
        ["northern-ireland"] = (@"\bNISR\b", "NISR 2011/331"),
        ["norway"] = ("EEA Agreement|Norwegian (?:rules|product register)", "CLP Art. 17(2), by the EEA Agreement"),
        ["gb-clp"] = (@"GB CLP|UK REACH|\bSI [0-9]{4}/", "General Product Safety Regulations 2005, SI 2005/1803"),
        ["switzerland"] = (@"ChemO\b|ChemRRV|PrSG|\bSR [0-9]", "ChemO Art. 10"),
        ["united-states"] = (@"\bCFR\b|OSHA|U\.S\.C|ASTM F2058|CPSA|CPSC|Federal Hazardous", "16 CFR 1500.17"),
        ["canada"] = (@"SOR/|C\.R\.C|(?<!U\.)S\.C\. [0-9]|Canada", "Candles Regulations, SOR/2016-165"),
        ["australia"] = ("Trade Measurement|Australia|Poisons Standard|Work Health and Safety", "Poisons Standard"),
        ["new-zealand"] = (
            @"Hazardous Substances (?:\(|and New)|New Zealand|Unsafe Goods|Consumer Guarantees",
            "Unsafe Goods (Candles and Candlewicks) Notice 2001"
        ),
        ["south-africa"] = (@"SANS\b|GN R280|Hazardous Chemical Agents|Act [0-9]+ of [0-9]{4}", "SANS 10234"),
        // No sign of it is foreign anywhere.
        ["un-ghs"] = ("(?!)", ""),
    };

    // Laws that are not foreign in an edition beside its own.
    private static readonly Dictionary<string, string[]> Shared = new()
    {
        // The Union's Regulation itself holds in both.
        ["northern-ireland"] = ["eu-clp"],
        ["norway"] = ["eu-clp"],
    };

    // Rules of single states of the Union, by the place that has them.
    private static readonly Dictionary<string, string> OfStates = new()
    {
        ["FR"] = "Code de l'environnement|Code de l’environnement",
        ["IT"] = "Decreto legislativo|97/129/EC",
        ["ES"] = "Real Decreto",
    };

    /// <summary>Whether a law holds in an edition beside its own.</summary>
    public static bool IsShared(string law, string edition) => Shared.GetValueOrDefault(edition, []).Contains(law);

    /// <summary>Finds citations that are foreign at a place of an edition.</summary>
    public static Regex ForeignAt(string place, string edition)
    {
        string[] own = [edition, .. Shared.GetValueOrDefault(edition, [])];
        IEnumerable<string> foreign = Of.Where(l => !own.Contains(l.Key))
            .Select(l =>
                (l.Key, edition) switch
                {
                    ("eu-clp", "gb-clp") => UnionSeenFromBritain,
                    ("eu-clp", "switzerland") => UnionSeenFromSwitzerland,
                    _ => l.Value.Signs,
                }
            )
            .Concat(OfStates.Where(s => s.Key != place).Select(s => s.Value));
        bool hasUnionStatements = own.Contains("eu-clp") || edition is "gb-clp" or "switzerland";
        return new Regex(string.Join('|', hasUnionStatements ? foreign : foreign.Append(UnionStatements)));
    }

    /// <summary>A text on one line: lines are joined again, or the break between "GB" and "CLP" would make another law of it.</summary>
    public static string Joined(string text) => Blanks().Replace(text, " ");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
