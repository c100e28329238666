using Chandlery.Core.Declared;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers;

/// <summary>Who answers for the candle, as papers name them.</summary>
/// <param name="Name">Name.</param>
/// <param name="Address">Address on one line.</param>
/// <param name="Telephone">Telephone.</param>
/// <param name="Contact">Mail address, or a page where there is none.</param>
internal sealed record MakerView(string Name, string Address, string Telephone, string? Contact) : IView
{
    /// <summary>The view of a declared maker.</summary>
    public static MakerView Of(Maker maker) =>
        new(maker.Name, string.Join(", ", maker.AddressLines), maker.Telephone, maker.Email ?? maker.Web);

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [("name", Name), ("address", Address), ("telephone", Telephone), ("contact", Contact)];
}
