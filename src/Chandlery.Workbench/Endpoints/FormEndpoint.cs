using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Forms;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>A declaration of any kind with its edits.</summary>
internal static class FormEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/form", PageJson.Default.FormRequest, request => Answer(rooms.Current, request));

    private static IResult Answer(Workroom room, FormRequest request) =>
        FormDesk.Lay(room, request) is { } form
            ? Endpoint.Json(
                new FormAnswer(
                    form.Kind,
                    form.Id,
                    form.Hash,
                    FormValues.Tree(form.Map),
                    form.Yaml,
                    [.. form.Problems.Select(p => Shown.Beside(room, form, p))],
                    [.. Users.Of(form.Folder.Catalogue, form.Kind, form.Id)]
                ),
                PageJson.Default.FormAnswer
            )
            : Endpoint.Missing("There is nothing of that name in the folder.");
}
