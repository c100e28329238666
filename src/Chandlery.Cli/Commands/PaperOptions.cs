using System.CommandLine;
using Chandlery.Paper.Drawing;

namespace Chandlery.Cli.Commands;

/// <summary>What all commands that print have in common.</summary>
internal sealed class PaperOptions
{
    private static readonly string[] Known = ["pdf", "png", "svg"];

    private static readonly Dictionary<string, PdfPurpose> Purposes = new()
    {
        ["people"] = PdfPurpose.People,
        ["press"] = PdfPurpose.Press,
        ["archive"] = PdfPurpose.Archive,
    };

    public Option<string?> Templates { get; } =
        new("--templates") { Description = "A folder whose templates are used instead of the program's own." };

    public Option<string[]> Formats { get; } =
        new("--format")
        {
            Description = "pdf (default), png or svg; several with commas.",
            CustomParser = result =>
            {
                string[] formats = [.. result.Tokens.SelectMany(t => t.Value.Split(','))];
                foreach (string format in formats.Where(f => !Known.Contains(f)))
                {
                    result.AddError($"'{format}' is no format: write pdf, png or svg, several with commas.");
                }

                return formats;
            },
            DefaultValueFactory = _ => ["pdf"],
            AllowMultipleArgumentsPerToken = false,
        };

    public Option<double> Resolution { get; } =
        new("--dpi")
        {
            Description = "Dots per inch of PNG (72 to 1200). Default: 300.",
            CustomParser = Numbers.Decimal("--dpi", 72, 1200),
            DefaultValueFactory = _ => 300,
        };

    public Option<string> Out { get; } =
        new("--out")
        {
            Description =
                "Folder to write into; made when it does not exist; - sends a single document to the standard output. Default: the present folder.",
            DefaultValueFactory = _ => ".",
        };

    public Option<PdfPurpose> Purpose { get; } =
        new("--for")
        {
            Description =
                "What the PDF is for: people (default; tagged, colours of the screen), press (process and spot inks, bleed, cut line; "
                + "made after the rules of PDF/X-1a), archive (made after the rules of PDF/A-3, declarations and assessment inside).",
            CustomParser = result =>
            {
                string purpose = result.Tokens[0].Value;
                if (!Purposes.TryGetValue(purpose, out PdfPurpose known))
                {
                    result.AddError($"'{purpose}' is nothing that a PDF is made for: write people, press or archive.");
                }

                return known;
            },
            DefaultValueFactory = _ => PdfPurpose.People,
            HelpName = "people|press|archive",
        };

    /// <summary>Whether papers are printed: whoever asks for facts alone (<see cref="JsonOption"/>) gets none beside.</summary>
    public bool IsWanted(ParseResult parse) => !JsonOption.IsGiven(parse) || parse.GetResult(Out) is { Implicit: false };

    public void AddTo(Command command)
    {
        Formats.CompletionSources.Add(Known);
        Purpose.CompletionSources.Clear();
        Purpose.CompletionSources.Add([.. Purposes.Keys]);
        command.Add(Out);
        command.Add(Formats);
        command.Add(Purpose);
        command.Add(Resolution);
        command.Add(Templates);
    }
}
