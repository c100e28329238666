using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.PoisonCentres;

/// <summary>A word that may, or may not, stand for some ingredients.</summary>
/// <param name="Name">The word.</param>
/// <param name="Components">The ingredients.</param>
/// <param name="Answer">Whether it may stand for them, with the figures.</param>
/// <param name="Clause">Where that stands.</param>
internal sealed record GenericView(string Name, string Components, string Answer, string Clause) : IView
{
    /// <summary>The view of a possible use.</summary>
    public static GenericView Of(GenericUse use)
    {
        string total = FigureFormat.English.AtMost(use.Total);
        string bound = FigureFormat.English.AtMost(use.Identifier.UpTo);
        return new GenericView(
            use.Identifier.Name,
            string.Join(", ", use.Components),
            use.IsAllowed
                ? $"may stand for them: together up to {total}, and {bound} is allowed. Solvents and carriers among them are still named."
                : $"may not stand for them: together up to {total}, and {bound} is allowed. Each is named.",
            use.Identifier.Clause
        );
    }

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [("name", Name), ("components", Components), ("answer", Answer), ("clause", Clause)];
}
