using System.CommandLine.Parsing;
using System.Globalization;

namespace Chandlery.Cli.Commands;

/// <summary>Reads numbers of the command line; what is none, or out of bounds, is refused in words.</summary>
internal static class Numbers
{
    /// <summary>A reader of whole numbers.</summary>
    /// <param name="name">What the number is called on the command line.</param>
    /// <param name="least">The least that is allowed.</param>
    /// <param name="most">The most that is allowed.</param>
    /// <param name="says">What is said of a number out of bounds; null to name the bounds.</param>
    public static Func<ArgumentResult, long> Long(string name, long least, long most, string? says = null) =>
        result =>
        {
            if (!long.TryParse(Text(result), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long value))
            {
                result.AddError($"{name} must be a whole number, not '{Text(result)}'.");
            }
            else if (value < least || value > most)
            {
                result.AddError(says ?? $"{name} must be between {least} and {most}.");
            }

            return value;
        };

    /// <summary>A reader of whole numbers, as <see cref="Long"/>.</summary>
    public static Func<ArgumentResult, int> Whole(string name, int least, int most, string? says = null)
    {
        Func<ArgumentResult, long> read = Long(name, least, most, says);
        return result => (int)Math.Clamp(read(result), least, most);
    }

    /// <summary>A reader of numbers with a decimal point.</summary>
    public static Func<ArgumentResult, double> Decimal(string name, double least, double most) =>
        result =>
        {
            if (!double.TryParse(Text(result), NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
            {
                result.AddError($"{name} must be a number such as 2.5, not '{Text(result)}'.");
            }
            else if (!(value >= least && value <= most))
            {
                result.AddError(string.Create(CultureInfo.InvariantCulture, $"{name} must be between {least} and {most}."));
            }

            return value;
        };

    private static string Text(ArgumentResult result) => result.Tokens[0].Value;
}
