using System.CommandLine;

namespace Chandlery.Cli.Commands;

/// <summary>What all commands that print have in common.</summary>
internal sealed class PaperOptions
{
    private static readonly string[] Known = ["pdf", "png", "svg"];

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
            Description = "Folder to write into; made when it does not exist. Default: the present folder.",
            DefaultValueFactory = _ => ".",
        };

    public void AddTo(Command command)
    {
        command.Add(Out);
        command.Add(Formats);
        command.Add(Resolution);
        command.Add(Templates);
    }
}
