using System.CommandLine;
using Chandlery.Cli.Answers;

namespace Chandlery.Cli.Commands;

/// <summary>The option by which a command answers programs.</summary>
internal static class JsonOption
{
    /// <summary>The option's name.</summary>
    public const string Name = "--json";

    /// <summary>The option of a command.</summary>
    /// <param name="command">The command with those above it, such as <c>register find</c>.</param>
    public static Option<bool> Of(string command) =>
        new(Name) { Description = $"Print JSON (schema: {AnswerSchemas.NameOf(command)}.schema.json, which 'schemas' writes)." };
}
