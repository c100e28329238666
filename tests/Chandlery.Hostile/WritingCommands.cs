using System.Text;

namespace Chandlery.Hostile;

/// <summary>Every command that writes files, aimed at one folder, and how to see whether what it left is whole.</summary>
internal static class WritingCommands
{
    /// <summary>The register's name in the folder.</summary>
    public const string Register = "register.sqlite";

    /// <summary>Command lines, the command's name first.</summary>
    /// <param name="folder">Where they write.</param>
    public static string[][] Into(string folder)
    {
        string bowl = Path.Combine(Repository.Demo, "candles", "harbour-bowl.yaml");
        string Out(string name) => Path.Combine(folder, name);
        return
        [
            ["dossier", bowl, "--out", Out("dossier")],
            ["label", bowl, "--format", "pdf,png,svg", "--out", Out("label")],
            ["card", bowl, "--out", Out("card")],
            ["sheet", Path.Combine(Repository.Demo, "candles", "fig-tin.yaml"), "--stock", "a4-3x4-circles-60", "--out", Out("sheet")],
            ["safety-sheet", bowl, "--out", Out("safety")],
            ["bench-sheet", bowl, "--out", Out("bench")],
            ["wicks", bowl, "--out", Out("wicks")],
            ["technical-file", bowl, "--out", Out("technical-file")],
            ["recall", Repository.Demo, "--batch", "hb-2611", "--hazard", "en: It can crack.", "--out", Out("recall")],
            ["incidents", Repository.Demo, "--out", Out("incidents")],
            ["ceiling", bowl, "--plot", Out("plot.svg")],
            [
                "draft",
                Path.Combine(Repository.Sheets, "dune.own-lines-en.pdf"),
                "--out",
                Out("oil.yaml"),
                "--replace",
                "--review-pages",
                Out("review"),
            ],
            ["export", Repository.Demo, "--out", Out("candles.csv")],
            ["schemas", "--out", Out("schemas")],
            ["new", Out("new")],
            ["register", "add", bowl, "--by", "nobody", "--register", Out(Register)],
        ];
    }

    /// <summary>
    /// The files under a folder that are cut off. Temporary files beside the target may stay behind a killed program; a file
    /// under its own name must be whole.
    /// </summary>
    public static IEnumerable<string> Halves(string folder) =>
        Directory
            .GetFiles(folder, "*", SearchOption.AllDirectories)
            .Where(f => !f.EndsWith(".tmp", StringComparison.Ordinal))
            .Where(IsHalf);

    private static bool IsHalf(string file)
    {
        byte[] bytes;
        try
        {
            bytes = File.ReadAllBytes(file);
        }
        catch (IOException)
        {
            return false;
        }

        string end = Encoding.Latin1.GetString(bytes.AsSpan(Math.Max(0, bytes.Length - 24))).TrimEnd();
        return Path.GetExtension(file) switch
        {
            ".pdf" => !end.EndsWith("%%EOF", StringComparison.Ordinal),
            ".png" => !end.Contains("IEND", StringComparison.Ordinal),
            ".svg" => !end.EndsWith("</svg>", StringComparison.Ordinal),
            ".json" => !end.EndsWith('}') && !end.EndsWith(']'),
            ".yaml" or ".csv" or ".txt" => bytes.Length == 0 || bytes[^1] != (byte)'\n',
            _ => false,
        };
    }
}
