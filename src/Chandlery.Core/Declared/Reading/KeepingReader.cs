using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads what a maker keeps of purchases, dispatches, incidents, tests and weighings.</summary>
internal static class KeepingReader
{
    public static Lot ReadLot(Fields fields, string id)
    {
        List<TextField> given = [.. LotShape.Contents.Where(fields.Has)];
        if (given.Count != 1)
        {
            fields.Problems.Add(
                fields.Place,
                $"A lot is of one thing, and here stand {given.Count}.",
                $"Write one of: {string.Join(", ", LotShape.Contents.Select(c => c.Key))}."
            );
        }

        TextField content = given.Count > 0 ? given[0] : LotShape.Oil;
        foreach (TextField other in LotShape.Contents.Where(c => c != content))
        {
            fields.OptionalText(other);
        }

        string of = given.Count > 0 ? fields.Text(content) : "?";
        return new Lot
        {
            Id = id,
            Place = fields.Place,
            Content = Enum.Parse<LotContent>(content.Key, ignoreCase: true),
            Of = new Reference(of, fields.PlaceOf(content)),
            Code = fields.Text(LotShape.Code),
            Bought = fields.Day(LotShape.Day),
            From = fields.Text(LotShape.From),
            Document = fields.OptionalText(LotShape.Document),
            Weight = fields.OptionalNumber(LotShape.Grams) is { } grams ? new Grams(grams) : null,
            Pieces = fields.OptionalNumber(LotShape.Pieces) is { } pieces ? (int)pieces : null,
            Paid = fields.OptionalNumber(LotShape.Paid) is { } paid ? new Money((decimal)paid) : null,
            BestBefore = fields.OptionalDay(LotShape.BestBefore),
        };
    }

    public static Dispatch ReadDispatch(Fields fields, string id)
    {
        var dispatch = new Dispatch
        {
            Id = id,
            Place = fields.Place,
            Batch = ReferenceReader.Read(fields, DispatchShape.Batch),
            On = fields.Day(DispatchShape.On),
            Pieces = (int)fields.Number(DispatchShape.Pieces),
            Country = PartyReader.ReadCountry(fields, fields.Text(DispatchShape.Country))!,
            ToWhom = fields.Choice(DispatchShape.ToWhom) == "shop" ? ReceiverKind.Shop : ReceiverKind.Person,
            Receiver = ReadReceiver(fields, DispatchShape.Receiver),
            Forgotten = fields.OptionalDay(DispatchShape.Forgotten),
        };
        if (fields.Has(DispatchShape.Receiver) == fields.Has(DispatchShape.Forgotten))
        {
            fields.Problems.Add(
                fields.Place,
                "A dispatch has either 'receiver' or the day on which that one was forgotten.",
                "Write 'receiver: { name: ..., address: [...] }'."
            );
        }

        return dispatch;
    }

    public static Incident ReadIncident(Fields fields, string id)
    {
        var incident = new Incident
        {
            Id = id,
            Place = fields.Place,
            Kind = Enum.Parse<IncidentKind>(fields.Choice(IncidentShape.Kind), ignoreCase: true),
            Candle = ReferenceReader.Read(fields, IncidentShape.Candle),
            Batch = fields.Has(IncidentShape.Batch) ? ReferenceReader.Read(fields, IncidentShape.Batch) : null,
            Country = PartyReader.ReadCountry(fields, fields.Text(IncidentShape.Country))!,
            Known = fields.Day(IncidentShape.Known),
            Happened = fields.Text(IncidentShape.Happened),
            Harm = Enum.Parse<Harm>(fields.Choice(IncidentShape.Harm), ignoreCase: true),
            Risks = [.. fields.List(IncidentShape.Risks.Key).OfType<YamlScalar>().Select(r => new Written<string>(r.Text.Trim(), r.Place))],
            Found = fields.OptionalText(IncidentShape.Found),
            Done = [.. fields.Groups(IncidentShape.Done).Select(ReadNote)],
            Reported = [.. fields.Groups(IncidentShape.Reported).Select(ReadReport)],
            Closed = fields.OptionalDay(IncidentShape.Closed),
            Person = ReadReceiver(fields, IncidentShape.Person),
            Forgotten = fields.OptionalDay(DispatchShape.Forgotten),
        };
        if (incident.Person is not null && incident.Forgotten is not null)
        {
            fields.Problems.Add(fields.Place, "'person' stands here and is said to be forgotten.", "Take one of the two out.");
        }

        CheckDays(incident, fields);
        return incident;
    }

    // A report from before anybody knew would stop a clock that never ran.
    private static void CheckDays(Incident incident, Fields fields)
    {
        if (incident.Reported.Any(r => r.On < incident.Known))
        {
            fields.Problems.Add(
                fields.PlaceOf(IncidentShape.Reported),
                "A report is of a day before 'known'.",
                "One of the two days is a slip of the pen: put it right."
            );
        }

        if (incident.Closed < incident.Known)
        {
            fields.Problems.Add(
                fields.PlaceOf(IncidentShape.Closed),
                "'closed' is a day before 'known'.",
                "One of the two days is a slip of the pen: put it right."
            );
        }
    }

    public static Test ReadTest(Fields fields, string id)
    {
        Reference candle = ReferenceReader.Read(fields, BatchShape.Candle);
        Fields wicks = fields.Group(TestShape.Wicks, "Write 'wicks: { count: 1, kind: cotton 6 }'.");
        int count = (int)wicks.Number(TestShape.WickCount);
        string? kind = wicks.OptionalText(TestShape.WickKind);
        wicks.Done();
        IReadOnlyList<Fields> samples = fields.Groups(TestShape.Samples);
        if (samples.Count == 0)
        {
            fields.Lacks(TestShape.Samples, "List each candle that was burnt, with its burns.");
        }

        Fields? limits = fields.OptionalGroup(TestShape.Limits);
        var own = new BurnLimits(
            limits?.OptionalNumber(TestShape.FlameLimit) is { } flame ? new Millimetres(flame) : null,
            limits?.OptionalNumber(TestShape.HeatLimit) is { } heat ? new Celsius(heat) : null,
            limits is not null && limits.Has(TestShape.SootLimit) ? Soot(limits) : null,
            limits?.OptionalNumber(TestShape.Slope)
        );
        limits?.Done();
        return new Test
        {
            Id = id,
            Place = fields.Place,
            Candle = candle,
            On = fields.Day(TestShape.On),
            By = fields.Text(TestShape.By),
            Vessel = fields.Has(TestShape.Vessel) ? ReferenceReader.Read(fields, TestShape.Vessel) : null,
            Wax = ReferenceReader.Read(fields, TestShape.Wax),
            WickKind = kind,
            WickCount = count,
            OilShare = new MassPercent(fields.Number(TestShape.OilPercent)),
            Room = fields.OptionalNumber(TestShape.Room) is { } room ? new Celsius(room) : null,
            Samples = [.. samples.Select(ReadSample)],
            Limits = own,
            Photographs = fields.Texts(TestShape.Photographs),
        };
    }

    public static Weighing ReadWeighing(Fields fields, string id)
    {
        var weighing = new Weighing
        {
            Id = id,
            Place = fields.Place,
            Batch = ReferenceReader.Read(fields, DispatchShape.Batch),
            On = fields.Day(DispatchShape.On),
            By = fields.Text(TestShape.By),
            Tare = new Grams(fields.Number(WeighingShape.Tare)),
            Gross = [.. fields.Groups(WeighingShape.Packages).Select(ReadPackage)],
        };
        if (weighing.Gross.Count == 0)
        {
            fields.Lacks(WeighingShape.Packages, "List what each full package weighs: '- { grams: 395.2 }'.");
        }

        return weighing;
    }

    public static IReadOnlyList<PackagingPart>? ReadPackaging(Fields fields) =>
        fields.Has(PackagingShape.Packaging) ? [.. fields.Groups(PackagingShape.Packaging).Select(ReadPart)] : null;

    private static PackagingPart ReadPart(Fields row)
    {
        var part = new PackagingPart(
            row.Text(PackagingShape.Part),
            Enum.Parse<PackagingMaterial>(row.Choice(PackagingShape.Material), ignoreCase: true),
            new Grams(row.Number(PackagingShape.Grams)),
            row.OptionalText(PackagingShape.Mark)
        );
        row.Done();
        return part;
    }

    private static Grams ReadPackage(Fields row)
    {
        var grams = new Grams(row.Number(WeighingShape.Grams));
        row.Done();
        return grams;
    }

    private static Receiver? ReadReceiver(Fields fields, GroupField field)
    {
        if (fields.OptionalGroup(field) is not { } group)
        {
            return null;
        }

        var receiver = new Receiver(
            group.Text(DispatchShape.Name),
            group.Texts(DispatchShape.Address),
            group.OptionalText(DispatchShape.Email),
            group.OptionalText(DispatchShape.Telephone)
        );
        group.Done();
        return receiver;
    }

    private static DayNote ReadNote(Fields row)
    {
        var note = new DayNote(row.Day(IncidentShape.Day), row.Text(IncidentShape.What));
        row.Done();
        return note;
    }

    private static IncidentReport ReadReport(Fields row)
    {
        var report = new IncidentReport(
            row.Day(IncidentShape.Day),
            row.Text(IncidentShape.Clock),
            row.OptionalText(IncidentShape.Reference)
        );
        row.Done();
        return report;
    }

    private static BurnSample ReadSample(Fields row)
    {
        IReadOnlyList<Fields> burns = row.Groups(TestShape.Burns);
        if (burns.Count == 0)
        {
            row.Lacks(TestShape.Burns, "List its burns: '- { hours: 4, flameMm: 30 }'.");
        }

        var sample = new BurnSample(
            row.Text(TestShape.Name),
            [.. burns.Select(ReadBurn)],
            row.OptionalFlag(TestShape.Fell),
            row.OptionalFlag(TestShape.Whole),
            row.OptionalFlag(TestShape.WentOut)
        );
        row.Done();
        return sample;
    }

    private static Burn ReadBurn(Fields row)
    {
        var burn = new Burn(
            row.Number(TestShape.Hours),
            row.OptionalNumber(TestShape.Flame) is { } flame ? new Millimetres(flame) : null,
            row.OptionalNumber(TestShape.Pool) is { } pool ? new Millimetres(pool) : null,
            row.OptionalNumber(TestShape.Heat) is { } heat ? new Celsius(heat) : null,
            row.Has(TestShape.Soot) ? Soot(row) : null,
            row.OptionalFlag(TestShape.Relit)
        );
        row.Done();
        return burn;
    }

    private static SootSeen Soot(Fields row) => Enum.Parse<SootSeen>(row.Choice(TestShape.Soot), ignoreCase: true);
}
