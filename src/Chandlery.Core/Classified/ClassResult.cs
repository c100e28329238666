using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.Classified;

/// <summary>A class that the candle has. Its explanation is worked out when somebody asks, since most of a catalogue is never asked about.</summary>
public sealed class ClassResult(HazardCategory category, ClassRule rule, Func<Explanation> explain)
{
    private readonly Lazy<Explanation> explanation = new(explain);

    /// <summary>Class and category.</summary>
    public HazardCategory Category => category;

    /// <summary>The rule that gave it.</summary>
    public ClassRule Rule => rule;

    /// <summary>Hazard statement, with the letters that say more where all causes agree.</summary>
    public StatementCode Statement => explanation.Value.Statement;

    /// <summary>How it was found.</summary>
    public Working Working => explanation.Value.Working;

    /// <summary>The substances behind it, the one that adds most first.</summary>
    public IReadOnlyList<Substance> Causes => explanation.Value.Causes;

    /// <summary>
    /// The organs that the sources of all causes name; empty where one names none, since naming the others' would say less than the
    /// general statement.
    /// </summary>
    public string Organs
    {
        get
        {
            if (!category.NamesOrgans)
            {
                return "";
            }

            List<string> named =
            [
                .. Causes.Select(s =>
                    string.Join(
                        ", ",
                        s.Hazards.Where(h => h.Category.Group == category.Group).Select(h => h.Organs).Where(o => o.Length > 0)
                    )
                ),
            ];
            return named.Contains("") ? "" : string.Join(", ", named.Distinct());
        }
    }
}
