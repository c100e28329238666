using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>precautions.yaml</c>: precautionary statements that the law offers, and the choice among them.</summary>
internal sealed class PrecautionsReader(LawCodes codes)
{
    public PrecautionRules Read(Fields fields)
    {
        Fields limit = fields.Group("limit", "{ most: 6, clause: ... }");
        Fields disposal = fields.Group("disposal", "{ code: P501, clause: ... }");
        var offers = new List<PrecautionOffer>();
        foreach (Fields row in fields.Groups("precautions"))
        {
            offers.Add(
                new PrecautionOffer(
                    codes.Statement(row, "code"),
                    codes.Statements(row, "for"),
                    (int)row.Number("rank", 0, 1000, "10"),
                    row.Enumeration("use", PrecautionUse.Keep),
                    codes.OptionalStatement(row, "coveredBy"),
                    row.Text("because", "a reason")
                )
            );
            row.Done();
        }

        var rules = new PrecautionRules(
            (int)limit.Number("most", 0, 100, "6"),
            LawCodes.Citation(limit),
            codes.Statement(disposal, "code"),
            LawCodes.Citation(disposal),
            offers
        );
        foreach (PrecautionOffer offer in offers.Where(o => o.CoveredBy is { } cover && offers.All(c => c.Code != cover)))
        {
            fields.Problems.Add(fields.PlaceOf("precautions"), $"{offer.Code} is covered by {offer.CoveredBy}, which is not offered.");
        }

        if (fields.Has("disposal") && offers.TrueForAll(o => o.Code != rules.Disposal))
        {
            fields.Problems.Add(disposal.PlaceOf("code"), $"The disposal statement {rules.Disposal} is not offered.");
        }

        limit.Done();
        disposal.Done();
        fields.Done();
        return rules;
    }
}
