using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.Text.RegularExpressions;

namespace Chandlery.Cli;

/// <summary>
/// The help without the library's own mention of defaults: the descriptions say them already, in words, and the library writes
/// days as the machine's region does.
/// </summary>
internal sealed partial class PlainHelp(SynchronousCommandLineAction inner) : SynchronousCommandLineAction
{
    /// <summary>Puts this help in the place of the library's.</summary>
    public static void AddTo(RootCommand root)
    {
        HelpOption help = root.Options.OfType<HelpOption>().Single();
        help.Action = new PlainHelp((SynchronousCommandLineAction)help.Action!);
    }

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        InvocationConfiguration configuration = parseResult.InvocationConfiguration;
        TextWriter real = configuration.Output;
        using var text = new StringWriter();
        configuration.Output = text;
        try
        {
            return inner.Invoke(parseResult);
        }
        finally
        {
            configuration.Output = real;
            real.Write(Default().Replace(text.ToString(), "").TrimEnd());
            real.WriteLine();
            if (Examples.Of(parseResult.CommandResult.Command) is { } example)
            {
                real.WriteLine($"\nExample:\n  {example}");
            }

            real.WriteLine();
        }
    }

    [GeneratedRegex(@"[ \t]*(\r?\n[ \t]+)?\[default:[^\]]*\]")]
    private static partial Regex Default();
}
