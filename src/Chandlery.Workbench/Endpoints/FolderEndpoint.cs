using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Forms;
using Chandlery.Workbench.Keeping;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>The folder at a glance: maker, supplies, what can be taken back, files with problems.</summary>
internal static class FolderEndpoint
{
    public static Endpoint Of(Rooms rooms) => Endpoint.Get("/api/folder", _ => Answer(rooms));

    private static IResult Answer(Rooms rooms)
    {
        Workroom room = rooms.Current;
        DeclarationFolder folder = room.Folder();
        Catalogue catalogue = folder.Catalogue;
        NextSteps next = room.History.Next();
        return Endpoint.Json(
            new FolderAnswer(
                rooms.IsExample ? null : Path.GetFileName(room.Root),
                catalogue.OfKind<Maker>().FirstOrDefault()?.Name,
                catalogue
                    .All.GroupBy(DeclaredFile.KindOf)
                    .ToDictionary(kind => kind.Key, kind => (IReadOnlyList<SupplyLine>)[.. kind.Select(d => Line(d, catalogue))]),
                room.Formulations.Next(catalogue),
                next.Undo?.What,
                next.Redo?.What,
                [.. catalogue.All.Count + catalogue.Wrong.Count == 0 ? [] : folder.Problems.Found.Select(room.Shown)]
            ),
            PageJson.Default.FolderAnswer
        );
    }

    private static SupplyLine Line(IDeclaration declared, Catalogue catalogue)
    {
        string NameOf(string candle) => catalogue.OfKind<Candle>().FirstOrDefault(c => c.Id == candle)?.Name ?? candle;
        string CodeOf(string batch) => catalogue.OfKind<Batch>().FirstOrDefault(b => b.Id == batch)?.Code ?? batch;
        return declared switch
        {
            Oil o => new SupplyLine(o.Id, o.Name, o.Supplier, o.IsUnreviewed ? "unsigned" : null)
            {
                GramsPerMl = o.Density?.Value,
                GramsPerDrop = o.DropMass?.Value,
                Note = o.Note?.ToString().ToLowerInvariant(),
            },
            Wax w => new SupplyLine(w.Id, w.Name, w.Supplier, null),
            Extra e => new SupplyLine(e.Id, e.Name, e.Supplier, null),
            Vessel v => new SupplyLine(v.Id, v.Name, $"{v.Material}, {v.Brimful}", null),
            Maker m => new SupplyLine(m.Id, m.Name, string.Join(", ", m.AddressLines), null),
            Candle c => new SupplyLine(c.Id, c.Name, $"{c.NetMass}", null),
            Batch b => new SupplyLine(b.Id, b.Code, NameOf(b.Candle.Id), null),
            Lot l => new SupplyLine(l.Id, l.Code, $"{l.CalledIn(catalogue)}, {l.From}", null),
            GiftSet set => new SupplyLine(set.Id, set.Name, "", null),
            Trial trial => new SupplyLine(trial.Id, trial.Name, IsoDay.Plain(trial.On), null),
            Dispatch d => new SupplyLine(d.Id, $"{CodeOf(d.Batch.Id)}, {d.Country}", $"{IsoDay.Plain(d.On)}, {d.Pieces}", null),
            Test test => new SupplyLine(test.Id, NameOf(test.Candle.Id), IsoDay.Plain(test.On), null),
            Weighing w => new SupplyLine(w.Id, CodeOf(w.Batch.Id), IsoDay.Plain(w.On), null),
            Incident i => new SupplyLine(i.Id, NameOf(i.Candle.Id), IsoDay.Plain(i.Known), null),
            _ => new SupplyLine(declared.Id, declared.Id, "", null),
        };
    }
}
