using System.Globalization;
using Chandlery.Core.Notified;

namespace Chandlery.Cli.Answers;

/// <summary>A valid unique formula identifier, for programs.</summary>
/// <param name="Ufi">The sixteen signs with their hyphens.</param>
/// <param name="Country">Country code of the VAT number; "KEY" for a company key.</param>
/// <param name="VatValue">The VAT number as a number, in digits.</param>
/// <param name="FormulationNumber">Formulation number.</param>
internal sealed record UfiAnswer(string Ufi, string Country, string VatValue, long FormulationNumber)
{
    private const int Group = 4;

    /// <summary>The answer on a UFI and what it holds.</summary>
    public static UfiAnswer Of(string ufi, UfiContent content)
    {
        string signs = new([.. ufi.Where(char.IsLetterOrDigit).Select(char.ToUpperInvariant)]);
        return new UfiAnswer(
            string.Join('-', signs.Chunk(Group).Select(c => new string(c))),
            content.Country,
            content.VatValue.ToString(CultureInfo.InvariantCulture),
            content.FormulationNumber
        );
    }
}
