namespace Chandlery.Sheets;

/// <summary>A substance that sheets of the corpus list.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Cas">CAS number.</param>
/// <param name="Ec">EC number; null for none.</param>
/// <param name="Classes">Classes as the sheets print them.</param>
public sealed record SheetSubstance(string Name, string Cas, string? Ec, IReadOnlyList<string> Classes)
{
    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<SheetSubstance> All()
    {
        using Stream stream = typeof(SheetSubstance).Assembly.GetManifestResourceStream("substances.tsv")!;
        using var reader = new StreamReader(stream);
        return
        [
            .. reader
                .ReadToEnd()
                .Split('\n')
                .Where(line => line.Length > 0 && line[0] != '#')
                .Select(line => line.Split('\t'))
                .Select(cells => new SheetSubstance(cells[0], cells[1], cells[2].Length == 0 ? null : cells[2], cells[3].Split(" | "))),
        ];
    }
}
