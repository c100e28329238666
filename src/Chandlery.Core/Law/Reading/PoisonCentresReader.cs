using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>poison-centres.yaml</c>: what a notification to the poison centres holds.</summary>
internal sealed class PoisonCentresReader(LawCodes codes)
{
    public PoisonCentreRules Read(Fields fields)
    {
        var rules = new PoisonCentreRules
        {
            Areas = ReadAreas(fields, "areas"),
            HazardousFrom = new MassPercent(fields.NumberFrom("hazardousFromPercent", 0, 100, "0")),
            OthersFrom = new MassPercent(fields.Number("othersFromPercent", 0, 100, "1")),
            MajorConcern = codes.CategoriesOrClasses(fields, "majorConcern"),
            MajorConcernWidths = ReadWidths(fields, "majorConcernWidths"),
            OtherWidths = ReadWidths(fields, "otherWidths"),
            ShareChanges = ReadChanges(fields),
            ShareChangesClause = LawCodes.Citation(fields, "shareChangesClause"),
            GenericIdentifiers = ReadGenerics(fields),
            Group = ReadGroup(fields),
            ToxicologySection = (int)fields.NumberFrom("toxicologySection", 1, 16, "11"),
            Points = ReadPoints(fields),
            Clause = LawCodes.Citation(fields),
            Confidence = fields.Text("confidence", "from memory"),
        };
        fields.Done();
        return rules;
    }

    private static List<HazardArea> ReadAreas(Fields fields, string key) =>
        [.. fields.Choices(key, "physical", "health", "environment").Select(a => Enum.Parse<HazardArea>(a, ignoreCase: true))];

    private static List<GenericIdentifier> ReadGenerics(Fields fields)
    {
        var generics = new List<GenericIdentifier>();
        foreach (Fields row in fields.Groups("genericIdentifiers"))
        {
            generics.Add(
                new GenericIdentifier(
                    row.Text("name", "perfumes"),
                    row.Enumeration("of", GenericSource.Oils),
                    new MassPercent(row.Number("upToPercent", 0, 100, "5")),
                    ReadAreas(row, "notWhereClassedFor"),
                    LawCodes.Citation(row)
                )
            );
            SkipStanding(row);
        }

        return generics;
    }

    private static GroupSubmissionRules ReadGroup(Fields fields)
    {
        Fields group = fields.Group("groupSubmission", "{ sameClassesFor: [health], differingPerfumesUpToPercent: 5, clause: ... }");
        var rules = new GroupSubmissionRules(
            ReadAreas(group, "sameClassesFor"),
            new MassPercent(group.Number("differingPerfumesUpToPercent", 0, 100, "5")),
            LawCodes.Citation(group)
        );
        SkipStanding(group);
        return rules;
    }

    private static Dictionary<NotifiedPoint, Citation> ReadPoints(Fields fields)
    {
        var points = new Dictionary<NotifiedPoint, Citation>();
        foreach (Fields row in fields.Groups("points"))
        {
            if (!points.TryAdd(row.Enumeration("what", NotifiedPoint.Submitter), LawCodes.Citation(row)))
            {
                row.Problems.Add(row.PlaceOf("what"), "This point of the notification stands here twice.");
            }

            SkipStanding(row);
        }

        foreach (NotifiedPoint point in Enum.GetValues<NotifiedPoint>().Where(p => !points.ContainsKey(p)))
        {
            fields.Problems.Add(fields.PlaceOf("points"), $"'points' has no row for {point}.");
            points.Add(point, Citation.None);
        }

        return points;
    }

    private static void SkipStanding(Fields row)
    {
        row.OptionalText("reading");
        row.OptionalText("confidence");
        row.Done();
    }

    private static List<ShareChange> ReadChanges(Fields fields)
    {
        var changes = new List<ShareChange>();
        foreach (Fields row in fields.Groups("shareChanges"))
        {
            changes.Add(
                new ShareChange(new MassPercent(row.NumberFrom("abovePercent", 0, 100, "10")), row.Number("ofItselfPercent", 0, 100, "10"))
            );
            row.Done();
        }

        if (changes.Count == 0 || changes[^1].Above != MassPercent.Zero)
        {
            fields.Problems.Add(fields.PlaceOf("shareChanges"), "The last row of 'shareChanges' must begin at 0.");
            changes.Add(new ShareChange(MassPercent.Zero, 1));
        }

        return changes;
    }

    private static List<RangeWidth> ReadWidths(Fields fields, string key)
    {
        var widths = new List<RangeWidth>();
        foreach (Fields row in fields.Groups(key))
        {
            widths.Add(new RangeWidth(new MassPercent(row.NumberFrom("fromPercent", 0, 100, "10")), row.Number("points", 0, 100, "3")));
            row.Done();
        }

        if (widths.Count == 0 || widths[^1].From != MassPercent.Zero)
        {
            fields.Problems.Add(fields.PlaceOf(key), $"The last row of '{key}' must begin at 0.");
            widths.Add(new RangeWidth(MassPercent.Zero, 1));
        }

        return widths;
    }
}
