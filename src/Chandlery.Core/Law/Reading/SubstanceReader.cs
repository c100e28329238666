using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law.AnnexVi;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>
/// Reads entries that the table of harmonised classes does not have, classes that are only expected, and names of extracts.
/// </summary>
internal sealed class SubstanceReader(HazardVocabulary vocabulary)
{
    private readonly IngredientReader ingredients = new(vocabulary);

    public (IReadOnlyList<EntryHistory> More, IReadOnlyList<ExpectedClasses> Expected, IReadOnlyList<string> Extracts) Read(Fields fields)
    {
        List<EntryHistory> more = [.. fields.Groups("substances").Select(ReadEntry)];
        List<ExpectedClasses> expected = [.. fields.Groups("expected").Select(ReadExpected)];
        IReadOnlyList<string> extracts = fields.Texts("extracts");
        fields.Done();
        return (more, expected, extracts);
    }

    private EntryHistory ReadEntry(Fields row)
    {
        IReadOnlyList<string> names = row.Texts("names");
        IReadOnlyList<string> cas = ReadCas(row);
        IReadOnlyList<string> ec = row.Texts("ec");
        foreach (string number in ec.Where(c => !EcNumber.Parse(c).Success))
        {
            row.Problems.Add(row.PlaceOf("ec"), $"{number} is not a valid EC number.");
        }

        if (cas.Count + ec.Count == 0)
        {
            row.Problems.Add(row.Place, "The entry has no number that it could be found by.", "Add 'cas' or 'ec'.");
        }

        IReadOnlyList<HazardClaim> claims = ingredients.ReadClaims(row) ?? [];
        if (claims.Count == 0)
        {
            row.Problems.Add(row.PlaceOf("classes"), "The entry has no classes.", "Write 'classes: [\"Skin Sens. 1B, H317\"]'.");
        }

        (double? acuteM, double? chronicM) = IngredientReader.ReadM(row);
        List<SpecificLimit> limits = [.. ingredients.ReadLimits(row)];
        // Before all acts of the table, so that it holds wherever some of them do.
        var act = new LegalAct("", row.Text("act", "the act as it is cited"), "", 0);
        var entry = new HarmonisedEntry
        {
            IndexNumber = row.OptionalText("index") ?? "",
            Members =
            [
                .. cas.Select((c, i) => new EntryMember(names, c, i < ec.Count ? ec[i] : null)),
                .. ec.Skip(cas.Count).Select(e => new EntryMember(names, null, e)),
            ],
            Classes = [.. claims.Select(c => new HarmonisedClass($"{c.Category.Code}, {c.Statement}", c, false))],
            Limits = limits,
            AcuteM = acuteM,
            ChronicM = chronicM,
            Toxicity = [.. IngredientReader.ReadToxicity(row)],
            Figures = [],
            Unread = [],
            Notes = [],
            Act = act,
            From = row.OptionalDay("from") ?? DateOnly.MinValue,
        };
        DateOnly? until = row.OptionalDay("until");
        row.Done();
        return new EntryHistory(
            entry.IndexNumber,
            until is { } last ? [entry, entry with { Classes = [], From = last.AddDays(1) }] : [entry]
        );
    }

    private ExpectedClasses ReadExpected(Fields row)
    {
        IReadOnlyList<string> cas = ReadCas(row);
        var expected = new ExpectedClasses(
            row.Text("name", "Piperonal"),
            cas,
            ingredients.ReadClaims(row) ?? [],
            row.Text("act", "draft of the 24th ATP to CLP"),
            row.Text("says", "would not be sold to the general public"),
            row.Text("source", "where it was read")
        );
        row.Done();
        return expected;
    }

    private static IReadOnlyList<string> ReadCas(Fields row)
    {
        IReadOnlyList<string> cas = row.Texts("cas");
        foreach (string number in cas.Where(c => !CasNumber.Parse(c).Success))
        {
            row.Problems.Add(row.PlaceOf("cas"), $"{number} is not a valid CAS number.");
        }

        return cas;
    }
}
