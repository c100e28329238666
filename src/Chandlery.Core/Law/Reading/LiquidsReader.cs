using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>liquids.yaml</c>: what a law says of liquids.</summary>
internal sealed class LiquidsReader(LawCodes codes)
{
    private const double ColdestCelsius = -100;
    private const double HottestCelsius = 500;

    public LiquidRules Read(Fields fields)
    {
        var rules = new LiquidRules
        {
            Flash = ReadFlash(fields.Group("flammability", "{ group: flammable liquids, rungs: [...], ... }")),
            Limits = [.. fields.Groups("rules").Select(r => new ClassesReader(codes).ReadRule(r)).OfType<LimitRule>()],
            NotComputed = [.. fields.Groups("notComputed").Select(new ClassesReader(codes).ReadNotComputed)],
            Vapour = fields.OptionalGroup("vapour") is { } vapour ? ReadVapour(vapour) : null,
            Refill = fields.OptionalGroup("refill") is { } refill ? ReadRefill(refill) : null,
        };
        fields.Done();
        return rules;
    }

    private FlashRule ReadFlash(Fields fields)
    {
        Fields methods = fields.Group("methods", "{ closedCup: [EN ISO 2719], clause: ... }");
        var rule = new FlashRule
        {
            Group = new ClassesReader(codes).ReadGroup(fields),
            Clause = LawCodes.Citation(fields),
            Confidence = fields.Text("confidence", "from memory"),
            Stricter = fields.OptionalText("stricter") ?? "",
            InForce = new InForce(null, null, null),
            Names = [],
            Rungs = [.. fields.Groups("rungs").Select(ReadRung)],
            Methods = methods.Texts("closedCup"),
            MethodsClause = LawCodes.Citation(methods),
            Relief = fields.OptionalGroup("exception") is { } relief ? ReadRelief(relief) : null,
        };
        methods.OptionalText("confidence");
        methods.Done();
        fields.Done();
        return rule;
    }

    private FlashRung ReadRung(Fields row)
    {
        var rung = new FlashRung(
            codes.Hazard(row, "result"),
            Degrees(row, "flashBelowCelsius"),
            Degrees(row, "flashUpToCelsius"),
            Degrees(row, "boilingUpToCelsius")
        );
        if ((rung.FlashBelow is null) == (rung.FlashUpTo is null))
        {
            row.Problems.Add(row.Place, "A category has either 'flashBelowCelsius' or 'flashUpToCelsius'.");
            rung = rung with { FlashBelow = null, FlashUpTo = new Celsius(HottestCelsius) };
        }

        row.Done();
        return rung;
    }

    private CombustionRelief ReadRelief(Fields row)
    {
        var relief = new CombustionRelief(
            codes.Hazard(row, "result"),
            new Celsius(row.Number("flashAboveCelsius", ColdestCelsius, HottestCelsius, "35")),
            row.Text("test", "the test's name"),
            LawCodes.Citation(row)
        );
        LawRows.Close(row);
        return relief;
    }

    private VapourRule ReadVapour(Fields row)
    {
        var rule = new VapourRule(codes.Statement(row, "statement"), codes.CategoriesOrClasses(row, "hazards"), LawCodes.Citation(row));
        LawRows.Close(row);
        return rule;
    }

    private RefillRule ReadRefill(Fields row)
    {
        var rule = new RefillRule(
            row.Day("from"),
            codes.CategoriesOrClasses(row, "hazards"),
            row.Text("asks", "what it asks of the shop"),
            LawCodes.Citation(row)
        );
        LawRows.Close(row);
        return rule;
    }

    private static Celsius? Degrees(Fields row, string key) =>
        row.OptionalNumber(key, ColdestCelsius, HottestCelsius) is { } degrees ? new Celsius(degrees) : null;
}
