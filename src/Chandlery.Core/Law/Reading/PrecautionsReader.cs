using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>precautions.yaml</c>: precautionary statements that the law offers, and the choice among them.</summary>
internal sealed class PrecautionsReader(LawCodes codes)
{
    private const string Hands = "hands";
    private const string Eyes = "eyes";

    public PrecautionRules Read(Fields fields)
    {
        Fields limit = fields.Group("limit", "{ most: 6, clause: ... }");
        Dictionary<string, string> confidences = ReadConfidences(fields);
        var offers = new List<PrecautionOffer>();
        foreach (Fields row in fields.Groups("precautions"))
        {
            offers.Add(
                new PrecautionOffer
                {
                    Code = codes.Statement(row, "code"),
                    For = codes.Statements(row, "for"),
                    Listed = row.OptionalFlag("listed") ?? true,
                    Clause = LawCodes.Citation(row),
                    Confidence = confidences[row.Choice("confidence", [.. confidences.Keys])],
                    Condition = row.OptionalText("condition") ?? "",
                    Rank = (int)row.Number("rank", 0, 1000, "10"),
                    Use = row.Enumeration("use", PrecautionUse.Keep),
                    CoveredBy = codes.OptionalStatement(row, "coveredBy"),
                    Protects = row.Choices("protects", Hands, Eyes)
                        .Aggregate(Protection.None, (all, word) => all | (word == Eyes ? Protection.Eyes : Protection.Hands)),
                    Because = row.Text("because", "a reason"),
                }
            );
            row.Done();
        }

        var rules = new PrecautionRules((int)limit.Number("most", 0, 100, "6"), LawCodes.Citation(limit), offers);
        foreach (PrecautionOffer offer in offers.Where(o => o.CoveredBy is { } cover && offers.All(c => c.Code != cover)))
        {
            fields.Problems.Add(fields.PlaceOf("precautions"), $"{offer.Code} is covered by {offer.CoveredBy}, which is not offered.");
        }

        // What covers another must be chosen before it, or nobody knows whether it is printed.
        foreach (
            PrecautionOffer offer in offers.Where(o =>
                offers.Any(c => c.Code == o.CoveredBy && c.Use == PrecautionUse.Keep && c.Rank >= o.Rank)
            )
        )
        {
            fields.Problems.Add(fields.PlaceOf("precautions"), $"{offer.CoveredBy} covers {offer.Code} and must have a lower rank.");
        }

        limit.Done();
        fields.Done();
        return rules;
    }

    private static Dictionary<string, string> ReadConfidences(Fields fields)
    {
        Dictionary<string, string> texts = fields.NamedTexts("confidences");
        if (texts.Count == 0)
        {
            fields.Problems.Add(
                fields.FirstPlace,
                "'confidences' is missing.",
                "Write 'confidences: { matrix: how the rows were checked }'."
            );
            texts[""] = "";
        }

        return texts;
    }
}
