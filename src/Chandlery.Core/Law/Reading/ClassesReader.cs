using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>classes.yaml</c>: when a mixture is classified, and what is not computed.</summary>
internal sealed class ClassesReader(LawCodes codes)
{
    private static readonly ExposureRoute[] Inhalation =
    [
        ExposureRoute.InhalationVapour,
        ExposureRoute.InhalationDust,
        ExposureRoute.InhalationGas,
    ];

    public (List<ClassRule> Rules, List<NotComputed> NotComputed) Read(Fields fields)
    {
        List<ClassRule> rules = [.. fields.Groups("rules").Select(ReadRule)];
        List<NotComputed> notComputed = [.. fields.Groups("notComputed").Select(ReadNotComputed)];
        fields.Done();
        return (rules, notComputed);
    }

    public ClassRule ReadRule(Fields fields)
    {
        string group = ReadGroup(fields);
        string method = fields.Choice("method", "each-ingredient", "weighted-sum", "acute-toxicity-estimate");
        ClassRule rule = method == "acute-toxicity-estimate" ? ReadAcuteToxicity(fields, group) : ReadLimits(fields, group, method);
        foreach (HazardCategory stray in rule.Results.Where(r => r.Group != group))
        {
            fields.Problems.Add(fields.Place, $"{stray.Code} is a result of this rule, but belongs to the group '{stray.Group}'.");
        }

        fields.Done();
        return rule;
    }

    public string ReadGroup(Fields fields)
    {
        string group = fields.Text("group", "skin sensitisation");
        List<string> known = [.. codes.Vocabulary.Categories.Select(c => c.Group).Distinct()];
        if (!known.Contains(group))
        {
            string near = Suggestion.DidYouMean(group, known);
            fields.Problems.Add(fields.PlaceOf("group"), $"'{group}' is no group of hazards.yaml.", near);
        }

        return group;
    }

    private LimitRule ReadLimits(Fields fields, string group, string method) =>
        new()
        {
            Group = group,
            Clause = LawCodes.Citation(fields),
            Confidence = fields.Text("confidence", "from memory"),
            Stricter = fields.OptionalText("stricter") ?? "",
            InForce = ReadInForce(fields),
            Names = ReadNames(fields, group),
            AddsSubstances = method == "weighted-sum",
            Rungs = [.. fields.Groups("rungs").Select(ReadRung)],
            ImpliedBy = ReadImplication(fields),
            Elicitation = ReadElicitation(fields),
            WhereAddingMayFail = ReadNonAdditive(fields),
            Unknown = ReadUnknownAquatic(fields),
            HighestViscosity = fields.OptionalNumber("highestViscosityMm2PerSecond", 0, 1e6) is { } viscosity
                ? new SquareMillimetresPerSecond(viscosity)
                : null,
        };

    private AcuteToxicityRule ReadAcuteToxicity(Fields fields, string group)
    {
        ExposureRoute[] forms = fields.Choice("route", "oral", "dermal", "inhalation") switch
        {
            "oral" => [ExposureRoute.Oral],
            "dermal" => [ExposureRoute.Dermal],
            _ => Inhalation,
        };
        string unit = fields.Text("unit", "mg/kg");
        var units = forms.ToDictionary(f => f, _ => unit);
        if (forms.Length > 1)
        {
            units[ExposureRoute.InhalationGas] = fields.Text("gasUnit", "ppmV");
        }

        return new AcuteToxicityRule
        {
            Group = group,
            Clause = LawCodes.Citation(fields),
            Confidence = fields.Text("confidence", "from memory"),
            Stricter = fields.OptionalText("stricter") ?? "",
            InForce = ReadInForce(fields),
            Names = ReadNames(fields, group),
            Forms = forms,
            Units = units,
            Unknown = ReadUnknown(fields.Group("unknown", "{ takenOutAbovePercent: 10, saidFromPercent: 1, clause: ... }")),
            Bounds = [.. fields.Groups("bounds").Select(row => ReadBound(row, forms))],
        };
    }

    private static UnknownToxicity ReadUnknown(Fields fields)
    {
        var unknown = new UnknownToxicity(
            new MassPercent(fields.Number("takenOutAbovePercent", 0, 100, "10")),
            new MassPercent(fields.Number("saidFromPercent", 0, 100, "1")),
            LawCodes.Citation(fields)
        );
        fields.Done();
        return unknown;
    }

    private static UnknownAquatic? ReadUnknownAquatic(Fields fields)
    {
        if (fields.OptionalGroup("unknown") is not { } group)
        {
            return null;
        }

        var unknown = new UnknownAquatic(new MassPercent(group.Number("saidFromPercent", 0, 100, "0.1")), LawCodes.Citation(group));
        LawRows.Close(group);
        return unknown;
    }

    private ToxicityBound ReadBound(Fields row, ExposureRoute[] forms)
    {
        HazardCategory result = codes.Hazard(row, "result");
        var upTo = new Dictionary<ExposureRoute, double> { [forms[0]] = row.Number("upTo", 0, 1e6, "2000") };
        var point = new Dictionary<ExposureRoute, double> { [forms[0]] = row.Number("pointEstimate", 0, 1e6, "500") };
        if (forms.Length > 1)
        {
            upTo[ExposureRoute.InhalationDust] = row.Number("dustUpTo", 0, 1e6, "5");
            point[ExposureRoute.InhalationDust] = row.Number("dustPointEstimate", 0, 1e6, "1.5");
            upTo[ExposureRoute.InhalationGas] = row.Number("gasUpTo", 0, 1e6, "20000");
            point[ExposureRoute.InhalationGas] = row.Number("gasPointEstimate", 0, 1e6, "4500");
        }

        var bound = new ToxicityBound(result, upTo, point, new MassPercent(row.Number("ignoreBelowPercent", 0, 100, "1")));
        row.Done();
        return bound;
    }

    private static InForce ReadInForce(Fields fields) =>
        new(fields.OptionalDay("from"), fields.OptionalDay("until"), fields.OptionalDay("existingMixturesFrom"));

    private IReadOnlyList<HazardCategory> ReadNames(Fields fields, string group)
    {
        switch (fields.Take("names"))
        {
            case null:
                return [];
            case YamlScalar { Text: "true" }:
                return [.. codes.Vocabulary.Categories.Where(c => c.Group == group)];
            case YamlList:
                return codes.Categories(fields, "names");
            case { } other:
                fields.Problems.Add(other.Place, "'names' must be true or a list of hazards.");
                return [];
        }
    }

    private Rung ReadRung(Fields fields)
    {
        HazardCategory result = codes.Hazard(fields, "result");
        var limit = new MassPercent(fields.Number("limitPercent", 0, 100, "1"));
        var terms = new List<Term>();
        foreach (Fields term in fields.Groups("terms"))
        {
            MFactorKind m = ReadM(term, "m");
            terms.Add(
                new Term(
                    codes.Categories(term, "hazards"),
                    term.OptionalNumber("weight", 0, 1000) ?? 1,
                    m,
                    new MassPercent(term.OptionalNumber("ignoreBelowPercent", 0, 100) ?? 0),
                    term.Has("ignoreBelowDividedByM") ? ReadM(term, "ignoreBelowDividedByM") : m
                )
            );
            term.Done();
        }

        RungCondition? condition = ReadCondition(fields);
        fields.Done();
        return new Rung(result, terms, limit, condition);
    }

    private RungCondition? ReadCondition(Fields fields)
    {
        if (fields.OptionalGroup("onlyWith") is not { } group)
        {
            return null;
        }

        var condition = new RungCondition(codes.Categories(group, "hazards"), new MassPercent(group.Number("fromPercent", 0, 100, "1")));
        group.Done();
        return condition;
    }

    private static MFactorKind ReadM(Fields fields, string key) =>
        fields.Has(key) ? fields.Enumeration(key, MFactorKind.None) : MFactorKind.None;

    private Implication? ReadImplication(Fields fields)
    {
        if (fields.OptionalGroup("impliedBy") is not { } group)
        {
            return null;
        }

        var implication = new Implication(codes.Categories(group, "results"), codes.Hazard(group, "gives"), LawCodes.Citation(group));
        group.Done();
        return implication;
    }

    private NonAdditive? ReadNonAdditive(Fields fields)
    {
        if (fields.OptionalGroup("whereAddingMayFail") is not { } group)
        {
            return null;
        }

        var method = new NonAdditive(
            LawCodes.Citation(group),
            group.Text("confidence", "from memory"),
            [.. group.Groups("rungs").Select(ReadRung)]
        );
        group.Done();
        return method;
    }

    private Elicitation? ReadElicitation(Fields fields)
    {
        if (fields.OptionalGroup("elicitation") is not { } group)
        {
            return null;
        }

        var limits = new List<KeyValuePair<HazardCategory, MassPercent>>();
        foreach (Fields row in group.Groups("limits"))
        {
            limits.Add(new(codes.Hazard(row, "hazard"), new MassPercent(row.Number("fromPercent", 0, 100, "0.1"))));
            row.Done();
        }

        var elicitation = new Elicitation(
            codes.Statement(group, "statement"),
            LawCodes.Citation(group),
            group.Number("fractionOfSpecificLimit", 0, 1, "0.1"),
            limits
        );
        group.Done();
        return elicitation;
    }

    public NotComputed ReadNotComputed(Fields fields)
    {
        var row = new NotComputed(codes.Categories(fields, "hazards"), fields.Text("why", "a reason"), LawCodes.Citation(fields));
        fields.Done();
        return row;
    }
}
