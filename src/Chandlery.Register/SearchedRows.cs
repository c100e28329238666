using System.Text.Json;

namespace Chandlery.Register;

/// <summary>The rows that are searched, made from the signed content and from nothing else.</summary>
internal static class SearchedRows
{
    private const char Between = '\u001f';

    /// <summary>The tables, each with its columns behind the entry's number.</summary>
    public static IReadOnlyDictionary<string, string> Tables { get; } =
        new Dictionary<string, string>
        {
            ["used_oil"] = "oil, name, document, revised",
            ["held_substance"] = "name, cas",
            ["issued_ufi"] = "ufi, composition",
        };

    /// <summary>The rows of an entry, by table, in the order in which they are written.</summary>
    public static IEnumerable<(string Table, string[] Cells)> Of(RegisterContent content)
    {
        foreach (UsedOil oil in content.Oils)
        {
            yield return ("used_oil", [oil.Oil, oil.Name, oil.Document, oil.Revised]);
        }

        foreach (HeldSubstance substance in content.Substances)
        {
            yield return ("held_substance", [substance.Name, substance.Cas]);
        }

        if (UfiOf(content) is { } issued)
        {
            yield return ("issued_ufi", [issued.Ufi, issued.Composition]);
        }
    }

    /// <summary>Cells as one text.</summary>
    public static string Joined(IEnumerable<string> cells) => string.Join(Between, cells);

    /// <summary>The UFI of an entry and the hash of the composition that it stands for; null when there is none.</summary>
    public static (string Ufi, string Composition)? UfiOf(RegisterContent content)
    {
        try
        {
            using JsonDocument result = JsonDocument.Parse(content.Result);
            return
                result.RootElement.TryGetProperty("ufi", out JsonElement ufi)
                && ufi.ValueKind == JsonValueKind.String
                && result.RootElement.TryGetProperty("composition", out JsonElement composition)
                ? (ufi.GetString()!, RegisterFile.Sha256(composition.GetRawText()))
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
