using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Law.Reading;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Cases;

/// <summary>Reads a <c>cases.yaml</c> strictly: whatever is not understood is noted with its place, and nothing is skipped.</summary>
internal sealed class CaseReader(LawCodes codes)
{
    private readonly IngredientReader ingredients = new(codes.Vocabulary);
    private readonly ExpectationReader expectations = new(codes);

    /// <summary>The cases of a file; those with a problem are among them, so look at the problems first.</summary>
    public IReadOnlyList<LawCase> Read(string edition, string file, string text, Problems problems)
    {
        if (YamlText.Read(text, file, problems) is not { } map)
        {
            return [];
        }

        var fields = new Fields(map, problems);
        List<LawCase> cases = [.. fields.Groups("cases").Select(group => ReadCase(edition, group))];
        fields.Done();
        foreach (LawCase twin in cases.GroupBy(c => c.Name).SelectMany(g => g.Skip(1)))
        {
            problems.Add(twin.Place, $"There is already a case '{twin.Name.Title}'.", "Give each case a name of its own.");
        }

        return cases;
    }

    private LawCase ReadCase(string edition, Fields fields)
    {
        string title = fields.Text("case", "Skin Sens. 1B just below 1 %");
        List<Ingredient> given = [.. fields.Groups("given").SelectMany((group, i) => ReadIngredients(group, i + 1))];
        double undeclared = fields.OptionalNumber("undeclaredPercent", 0, 100) ?? 0;
        DateOnly day = fields.OptionalDay("on") ?? TestLaw.Today;
        DateOnly? since = fields.OptionalDay("onMarketSince");
        IReadOnlyList<Expectation> then = expectations.Read(fields, [.. given.Select(g => g.Identity.Name)]);
        string? source = fields.OptionalText("source");
        string? memory = fields.OptionalText("fromMemory");
        CheckSource(fields, source, memory);
        CheckGiven(fields, given, undeclared);
        fields.Done();
        return new LawCase(
            new CaseName(edition, title),
            fields.Place,
            given,
            undeclared,
            day,
            since,
            then,
            source ?? memory ?? "",
            memory is not null
        );
    }

    private IEnumerable<Ingredient> ReadIngredients(Fields fields, int number)
    {
        string name = fields.OptionalText("name") ?? $"s{number}";
        double percent = fields.Number("percent", 0, 100, "2.5");
        int times = (int)(fields.OptionalNumber("times", 1, 100) ?? 1);
        Ingredient one = TestLaw.Line(name, percent, []) with
        {
            Claims = fields.Take("classes") is YamlScalar { Text: "unknown" } ? null : ReadClasses(fields),
            SpecificLimits = [.. ingredients.ReadLimits(fields)],
            Toxicity = [.. IngredientReader.ReadToxicity(fields)],
        };
        (double? acuteM, double? chronicM) = IngredientReader.ReadM(fields);
        fields.Done();
        one = one with { AcuteM = acuteM, ChronicM = chronicM };
        return times == 1
            ? [one]
            : Enumerable.Range(1, times).Select(i => one with { Identity = new SubstanceIdentity($"{name} no. {i}", null, null) });
    }

    // Silence would read as "unknown": a case says so where it means it.
    private IReadOnlyList<Core.Hazards.HazardClaim> ReadClasses(Fields fields)
    {
        if (!fields.Has("classes"))
        {
            fields.Problems.Add(
                fields.Place,
                "'classes' is missing.",
                "Write 'classes: [Skin Sens. 1B]', 'classes: not classified', or 'classes: unknown'."
            );
        }

        return ingredients.ReadClaims(fields) ?? [];
    }

    private static void CheckSource(Fields fields, string? source, string? memory)
    {
        if (source is null == memory is null)
        {
            fields.Problems.Add(
                fields.Place,
                "A case has either a 'source' or 'fromMemory'.",
                "Write 'source: document, clause, edition'; where nobody has compared it with the text, 'fromMemory: why'."
            );
        }
        else if (source?.Contains("from memory", StringComparison.OrdinalIgnoreCase) == true)
        {
            fields.Problems.Add(fields.PlaceOf("source"), "What is from memory is no source.", "Write it under 'fromMemory'.");
        }
    }

    private static void CheckGiven(Fields fields, IReadOnlyList<Ingredient> given, double undeclared)
    {
        if (given.Count == 0 && undeclared == 0)
        {
            fields.Problems.Add(
                fields.Place,
                "'given' is missing.",
                "List at least one ingredient: '- { percent: 2, classes: [Skin Sens. 1B] }'."
            );
        }

        double sum = undeclared + given.Sum(g => g.Share.High.Value);
        if (sum > 100 + 1e-9)
        {
            fields.Problems.Add(
                fields.PlaceOf("given"),
                $"The ingredients add up to {CaseQuestion.Percent(sum)} %.",
                "All in all there are 100 %."
            );
        }
    }
}
