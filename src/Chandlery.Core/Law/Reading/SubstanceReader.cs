using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads the list of substances with and without harmonised entries.</summary>
internal sealed class SubstanceReader(HazardVocabulary vocabulary)
{
    private readonly IngredientReader ingredients = new(vocabulary);

    public IEnumerable<SubstanceEntry> Read(Fields fields)
    {
        var entries = new List<SubstanceEntry>();
        foreach (Fields row in fields.Groups("substances"))
        {
            IReadOnlyList<string> cas = row.Texts("cas");
            foreach (string number in cas.Where(c => !CasNumber.Parse(c).Success))
            {
                row.Problems.Add(row.PlaceOf("cas"), $"{number} is not a valid CAS number.");
            }

            IReadOnlyList<string> ec = row.Texts("ec");
            foreach (string number in ec.Where(c => !EcNumber.Parse(c).Success))
            {
                row.Problems.Add(row.PlaceOf("ec"), $"{number} is not a valid EC number.");
            }

            bool harmonised = row.OptionalFlag("harmonised") ?? row.Has("classes");
            (double? acute, double? chronic) = IngredientReader.ReadM(row);
            IReadOnlyList<HazardClaim>? claims = ingredients.ReadClaims(row);
            entries.Add(
                new SubstanceEntry
                {
                    Names = row.Texts("names"),
                    CasNumbers = cas,
                    EcNumbers = ec,
                    IndexNumber = row.OptionalText("index"),
                    Claims = harmonised ? claims : null,
                    Limits = [.. ingredients.ReadLimits(row)],
                    AcuteM = acute,
                    ChronicM = chronic,
                    Toxicity = [.. IngredientReader.ReadToxicity(row)],
                    InForce = new InForce(row.OptionalDay("from"), row.OptionalDay("until")),
                    Act = row.OptionalText("act") ?? "",
                    Confidence = row.Text("confidence", "from memory"),
                    NonAdditiveKind = row.OptionalText("nonAdditive"),
                }
            );
            row.Done();
        }

        fields.Done();
        return entries;
    }

    /// <summary>Names of fragrance allergens by CAS number.</summary>
    public static Dictionary<string, string> ReadAllergens(Fields fields)
    {
        var names = new Dictionary<string, string>();
        foreach (Fields row in fields.Groups("allergens"))
        {
            string name = row.Text("name", "Linalool");
            row.OptionalText("since");
            foreach (string cas in row.Texts("cas"))
            {
                names[cas] = name;
            }

            row.Done();
        }

        fields.Done();
        return names;
    }
}
