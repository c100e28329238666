using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>Reads <c>market.yaml</c>: what must be there before a candle is sold.</summary>
internal sealed class MarketReader(IReadOnlyDictionary<string, string> places)
{
    public MarketRules Read(Fields fields)
    {
        var rules = new MarketRules(
            [.. fields.Groups("roles").Select(ReadRole)],
            [.. fields.Groups("questions").Select(ReadQuestion)],
            [.. fields.Groups("claims").Select(ReadClaim)]
        );
        fields.Done();
        return rules;
    }

    private RoleDuty ReadRole(Fields row)
    {
        var duty = new RoleDuty(
            row.Enumeration("role", MarketRole.ResponsiblePerson),
            SafetyRows.Days(row),
            SafetyRows.Places(row, "soldIn", places),
            SafetyRows.Places(row, "establishedIn", places),
            SafetyRows.Stops(row),
            row.Text("says", "what the law wants"),
            LawCodes.Citation(row)
        );
        LawRows.Close(row);
        return duty;
    }

    private static QuestionRow ReadQuestion(Fields row)
    {
        var question = new QuestionRow(
            row.Enumeration("question", SafetyQuestion.LooksLikeFood),
            SafetyRows.Days(row),
            SafetyRows.Stops(row),
            row.Text("says", "what follows"),
            LawCodes.Citation(row)
        );
        LawRows.Close(row);
        return question;
    }

    private static ClaimRow ReadClaim(Fields row)
    {
        var claim = new ClaimRow(
            row.Texts("words"),
            SafetyRows.Days(row),
            SafetyRows.Stops(row),
            row.Text("says", "what follows"),
            LawCodes.Citation(row)
        );
        LawRows.Close(row);
        return claim;
    }
}
