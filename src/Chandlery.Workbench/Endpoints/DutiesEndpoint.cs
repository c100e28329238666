using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>What is due for a candle beside its hazard label, by place: done or open, and by what that is shown.</summary>
internal static class DutiesEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post(
            "/api/duties",
            PageJson.Default.DeskRequest,
            request => OnDesk.Answer(rooms.Current, request.Id, request.Edits, desk => Answer(rooms.Current, desk))
        );

    private static IResult Answer(Workroom room, CandleDesk desk)
    {
        if (desk.Assessments.Count == 0)
        {
            return OnDesk.NotAssessed;
        }

        var finder = new DutyFinder(desk.Catalogue, room.Lawbook);
        return Endpoint.Json(
            new DutiesAnswer(
                [.. desk.Assessments.SelectMany(finder.Of).Select(l => On(room, l))],
                [.. desk.Assessments.SelectMany(finder.WithoutRules).Select(p => p.Name).Distinct()]
            ),
            PageJson.Default.DutiesAnswer
        );
    }

    private static DutyOnDesk On(Workroom room, DutyLine line)
    {
        DutyReport report = DutyReport.Of(line);
        string shown = report.Shown.Replace(room.Root + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);
        return new DutyOnDesk(report with { Shown = shown }, EnumName.Of(line.Duty.By));
    }
}
