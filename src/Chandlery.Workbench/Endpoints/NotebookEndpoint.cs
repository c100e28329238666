using Chandlery.Core.Asked.Trials;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>What a candle of each trial's blend would be: in a wax, at a load, at places of sale.</summary>
internal static class NotebookEndpoint
{
    private const double UsualLoadOfWax = 8;

    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/notebook", PageJson.Default.NotebookRequest, request => Answer(rooms.Current, request));

    private static IResult Answer(Workroom room, NotebookRequest request)
    {
        Catalogue catalogue = room.Folder().Catalogue;
        List<Wax> waxes = [.. catalogue.OfKind<Wax>()];
        Wax? wax = waxes.Find(w => w.Id == request.Wax) ?? waxes.FirstOrDefault();
        List<Place> places = [.. (request.Places ?? []).Select(room.Lawbook.FindPlace).OfType<Place>()];
        if (wax is null || places.Count == 0)
        {
            return Endpoint.Refused(
                wax is null ? "Declare a wax first: a blend alone has no class, a candle has." : "Choose where the candle would be sold."
            );
        }

        double percent = request.LoadPercent is > 0 and < 100 ? request.LoadPercent.Value : UsualLoadOfWax;
        var question = new TrialQuestion(wax, new FragranceLoad(new MassPercent(percent), LoadBasis.Wax), places);
        var assessor = new TrialAssessor(room.Lawbook, catalogue, Workroom.Today);
        return Endpoint.Json(
            new NotebookAnswer([.. catalogue.OfKind<Trial>().Select(t => Note(assessor, t, question, room))]),
            PageJson.Default.NotebookAnswer
        );
    }

    private static TrialNote Note(TrialAssessor assessor, Trial trial, TrialQuestion question, Workroom room)
    {
        var problems = new Problems();
        IReadOnlyList<TrialVerdict> verdicts = assessor.Assess(trial, question, problems);
        if (!problems.None || verdicts.Count == 0)
        {
            return new TrialNote(trial.Id, [], [.. problems.Found.Select(room.Shown)], null, null);
        }

        IReadOnlyList<TrialAnswer?> free = assessor.LargestLoads(trial, question, new TrialAims([TrialAim.NoClass], null), problems);
        return new TrialNote(
            trial.Id,
            [.. verdicts[0].Recipe.Oils.Select(o => new OilPercent(o.Oil.Id, o.ShareOfBlend.Value))],
            [],
            free.All(load => load is not null) ? free.Min(load => load!.Recipe.MeltLoadOfWax.Value) : null,
            [.. verdicts.Select(TrialLine.Of)]
        );
    }
}
