using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Chandlery.Workbench.Forms;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>What another day's law, or another declaration of an oil or wax, would change.</summary>
internal static class ChangesEndpoint
{
    /// <summary>Between the laws of two days.</summary>
    public static Endpoint OfDays(Rooms rooms) =>
        Endpoint.Get("/api/changes", query => Days(rooms.Current, query["from"].ToString(), query["to"].ToString()));

    /// <summary>With a declaration as it is edited.</summary>
    public static Endpoint OfDeclaration(Rooms rooms) =>
        Endpoint.Post("/api/changes/declaration", PageJson.Default.FormRequest, request => Declaration(rooms.Current, request));

    private static IResult Days(Workroom room, string from, string to)
    {
        Parsed<DateOnly> before = IsoDay.Parse(from);
        Parsed<DateOnly> after = IsoDay.Parse(to);
        if (!before.Success || !after.Success)
        {
            return Endpoint.Refused("Write both days as year-month-day.");
        }

        Catalogue catalogue = room.Folder().Catalogue;
        return Answer(catalogue, StateComparison.Compare(States(room, catalogue, before.Value), States(room, catalogue, after.Value)));
    }

    private static IResult Declaration(Workroom room, FormRequest request)
    {
        if (FormDesk.Lay(room, request) is not { } form)
        {
            return Endpoint.Missing("There is nothing of that name in the folder.");
        }

        if (form.Declared is not { } edited)
        {
            return Endpoint.Refused([.. form.Problems.Select(p => Shown.Beside(room, form, p).Text)]);
        }

        DeclarationFolder folder = form.Folder;
        var problems = new Problems();
        Catalogue changed = CandleDesk.With(folder, edited, problems);
        return Answer(
            folder.Catalogue,
            StateComparison.Compare(States(room, folder.Catalogue, Workroom.Today), States(room, changed, Workroom.Today))
        );
    }

    private static IReadOnlyList<CatalogueEntry<CandleState>> States(Workroom room, Catalogue catalogue, DateOnly day) =>
        CatalogueRun.Assess(catalogue, room.Lawbook, day, null, CandleState.Of);

    private static IResult Answer(Catalogue catalogue, IReadOnlyList<CandleChange> changes) =>
        Endpoint.Json(
            new ChangesAnswer([
                .. changes.Select(c => new ChangedCandle(
                    c,
                    catalogue.OfKind<Candle>().FirstOrDefault(d => d.Id == c.Id)?.Name,
                    [.. catalogue.OfKind<Batch>().Where(b => b.Candle.Id == c.Id || b.Id == c.Id).Select(b => Sold(catalogue, b))]
                )),
            ]),
            PageJson.Default.ChangesAnswer
        );

    private static SoldBatch Sold(Catalogue catalogue, Batch batch) =>
        new(batch.Code, batch.Made, catalogue.OfKind<Dispatch>().Where(d => d.Batch.Id == batch.Id).Sum(d => d.Pieces));
}
