using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Symbols;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>A drawn symbol, such as a pictogram.</summary>
internal static class SymbolEndpoint
{
    public static Endpoint Of(Rooms rooms) => Endpoint.Get("/api/symbol", query => Answer(rooms.Current, query["name"].ToString()));

    private static IResult Answer(Workroom room, string name) =>
        room.Shop.Symbols.Has(name)
            ? Results.Text(
                SvgDrawing.Draw(
                    new Scene(SymbolSheet.Units, SymbolSheet.Units, [.. room.Shop.Symbols.Place(name, 0, 0, SymbolSheet.Units)], []),
                    name
                ),
                "image/svg+xml"
            )
            : Endpoint.Missing("There is no such symbol.");
}
