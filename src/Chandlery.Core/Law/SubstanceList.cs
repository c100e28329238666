using Chandlery.Core.Declared;

namespace Chandlery.Core.Law;

/// <summary>The substances that are known beyond what suppliers declare.</summary>
public sealed class SubstanceList
{
    private readonly Dictionary<string, List<SubstanceEntry>> byCas = [];

    private readonly IReadOnlyDictionary<string, string> allergenNames;

    /// <summary>Builds the list.</summary>
    /// <param name="entries">Substances with and without harmonised entries.</param>
    /// <param name="allergenNames">Names of fragrance allergens in the European Union's cosmetics law, by CAS number.</param>
    public SubstanceList(IReadOnlyList<SubstanceEntry> entries, IReadOnlyDictionary<string, string> allergenNames)
    {
        Entries = entries;
        this.allergenNames = allergenNames;
        foreach (SubstanceEntry entry in entries)
        {
            foreach (string cas in entry.CasNumbers)
            {
                if (!byCas.TryGetValue(cas, out List<SubstanceEntry>? list))
                {
                    byCas[cas] = list = [];
                }

                list.Add(entry);
            }
        }
    }

    /// <summary>All entries.</summary>
    public IReadOnlyList<SubstanceEntry> Entries { get; }

    /// <summary>The name of a fragrance allergen, or null when the substance is none.</summary>
    public string? AllergenName(CasNumber? cas) => cas is null ? null : allergenNames.GetValueOrDefault(cas.Text);

    /// <summary>The entry that holds on that day, or null when the substance is not listed.</summary>
    public SubstanceEntry? Find(CasNumber? cas, DateOnly day) =>
        cas is not null && byCas.TryGetValue(cas.Text, out List<SubstanceEntry>? list) ? list.FirstOrDefault(e => e.InForce.On(day)) : null;
}
