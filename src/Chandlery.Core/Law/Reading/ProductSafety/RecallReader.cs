using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>Reads <c>recall.yaml</c>: what a recall holds and how long its records are kept.</summary>
internal static class RecallReader
{
    private const int MostYears = 100;

    public static RecallRules Read(Fields fields)
    {
        IReadOnlyList<NoticeRow> parts = [.. fields.Groups("notice").Select(ReadPart)];
        Fields avoid = fields.Group("avoid", "{ words: [voluntary], clause: ... }");
        IReadOnlyList<string> words = avoid.Texts("words");
        Hazards.Citation avoidClause = LawCodes.Citation(avoid);
        LawRows.Close(avoid);
        Fields authority = fields.Group("authority", "{ says: ..., clause: ... }");
        string says = authority.Text("says", "to whom, and how");
        Hazards.Citation authorityClause = LawCodes.Citation(authority);
        LawRows.Close(authority);
        var rules = new RecallRules(parts, words, avoidClause, says, authorityClause, [.. fields.Groups("keep").Select(ReadKeep)]);
        fields.Done();
        return rules;
    }

    private static NoticeRow ReadPart(Fields row)
    {
        var part = new NoticeRow(row.Enumeration("part", NoticePart.Headline), row.Text("says", "what"), LawCodes.Citation(row));
        LawRows.Close(row);
        return part;
    }

    private static KeepRow ReadKeep(Fields row)
    {
        bool atMost = row.Has("atMostYears");
        var keep = new KeepRow(
            row.Enumeration("what", Kept.TechnicalFile),
            (int)row.Number(atMost ? "atMostYears" : "years", 0, MostYears, "10"),
            atMost,
            LawCodes.Citation(row)
        );
        LawRows.Close(row);
        return keep;
    }
}
