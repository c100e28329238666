using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Yaml;

namespace Chandlery.Files.Recalls;

/// <summary>What the danger of a recall is, as the maker says it in each language.</summary>
public sealed class SaidDangers
{
    /// <summary>The language that receivers get whose own is not at hand.</summary>
    public const string Fallback = "en";

    private readonly Dictionary<string, string> texts;

    private SaidDangers(Dictionary<string, string> texts) => this.texts = texts;

    /// <summary>Whether the danger is said in a language.</summary>
    public bool Has(string language) => texts.ContainsKey(language);

    /// <summary>The danger in a language, or in English.</summary>
    public string In(string language) => texts.GetValueOrDefault(language, texts[Fallback]);

    /// <summary>Reads the danger, each time with its language before a colon; null with problems.</summary>
    /// <param name="recall">What is recalled.</param>
    /// <param name="law">Law and languages.</param>
    /// <param name="hazards">Such as <c>en: The vessel can crack.</c></param>
    /// <param name="source">What the maker wrote them as.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static SaidDangers? Read(RecallResult recall, Lawbook law, IEnumerable<string> hazards, string source, Problems problems)
    {
        var place = new TextPlace(source, 0, 0);
        var own = new Problems();
        HashSet<string> countries = [.. recall.Batches.SelectMany(b => b.Dispatches).Select(d => d.Country)];
        List<RecallRules> laws = [.. countries.Select(c => law.Safety.For(law.Safety.Recalls, c)).OfType<RecallRules>().Distinct()];
        var dangers = new Dictionary<string, string>();
        foreach (string hazard in hazards)
        {
            string[] parts = hazard.Split(':', 2);
            string code = parts[0].Trim();
            if (parts.Length < 2 || law.FindLanguage(code) is null)
            {
                own.Add(
                    place,
                    $"'{hazard}' does not begin with a language and a colon.",
                    "Write \"en: The vessel can crack and hot wax can run out.\""
                );
                continue;
            }

            foreach (RecallRules rules in laws.Count > 0 ? laws : [.. law.Safety.Recalls])
            {
                foreach (string word in rules.Lessening(parts[1]))
                {
                    own.Add(
                        place,
                        $"'{word}' lessens the risk, which a recall notice must not do ({rules.AvoidClause}).",
                        "Say what can happen, and nothing that plays it down."
                    );
                }
            }

            dangers[code] = parts[1].Trim();
        }

        if (own.None && !dangers.ContainsKey(Fallback))
        {
            own.Add(place, "The danger is not said in English.", "Say it in English too: receivers whose language is not at hand get it.");
        }

        problems.AddRange(own.Found);
        return own.None ? new SaidDangers(dangers) : null;
    }
}
