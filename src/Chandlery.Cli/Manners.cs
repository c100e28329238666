using System.CommandLine;

namespace Chandlery.Cli;

/// <summary>How much every command says.</summary>
internal static class Manners
{
    /// <summary>The option for problems alone.</summary>
    public const string Quiet = "--quiet";

    /// <summary>The option for more.</summary>
    public const string Verbose = "--verbose";

    /// <summary>Adds the options to every command of the tree.</summary>
    public static void AddTo(RootCommand root)
    {
        root.Add(
            new Option<bool>(Quiet)
            {
                Description = "Print only what is wrong; the exit code says the rest. Files are written all the same.",
                Recursive = true,
            }
        );
        root.Add(
            new Option<bool>(Verbose)
            {
                Description = "Say on the error stream which folder was read and what was assessed under which law.",
                Recursive = true,
            }
        );
    }
}
