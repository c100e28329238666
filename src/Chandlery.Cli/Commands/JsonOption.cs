using System.CommandLine;
using Chandlery.Cli.Answers;

namespace Chandlery.Cli.Commands;

/// <summary>The option by which a command answers programs.</summary>
internal static class JsonOption
{
    /// <summary>The option's name.</summary>
    public const string Name = "--json";

    /// <summary>Whether a command line asks for it.</summary>
    public static bool IsGiven(ParseResult parse) =>
        parse.CommandResult.Command.Options.OfType<Option<bool>>().FirstOrDefault(o => o.Name == Name) is { } json && parse.GetValue(json);

    /// <summary>Bounds the forms for people that a command prints, and shows whoever asks for JSON there the one way to it.</summary>
    /// <param name="format">The option that names the form.</param>
    /// <param name="forms">What it takes.</param>
    public static void AcceptOnly(Option<string> format, params string[] forms)
    {
        format.CompletionSources.Add(forms);
        format.Validators.Add(result =>
        {
            if (result.Tokens is [var given] && !forms.Contains(given.Value))
            {
                string remedy = given.Value == "json" ? $" For JSON write {Name}." : "";
                result.AddError($"'{given.Value}' is nothing that '{format.Name}' takes: {string.Join(", ", forms)}.{remedy}");
            }
        });
    }

    /// <summary>The option of a command that prints papers: with it they are printed where a folder is named alone.</summary>
    /// <param name="command">The command.</param>
    public static Option<bool> BesidePapers(string command)
    {
        Option<bool> json = Of(command);
        json.Description = $"{json.Description![..^1]}, and no paper unless --out is given.";
        return json;
    }

    /// <summary>The option of a command.</summary>
    /// <param name="command">The command with those above it, such as <c>register find</c>.</param>
    public static Option<bool> Of(string command) =>
        new(Name) { Description = $"Print JSON (schema: {AnswerSchemas.NameOf(command)}.schema.json, which 'schemas' writes)." };
}
