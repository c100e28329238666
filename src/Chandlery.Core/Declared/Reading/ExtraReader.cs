using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads dyes and what else goes into a melt.</summary>
/// <param name="ingredients">Reads tables of ingredients.</param>
internal sealed class ExtraReader(IngredientReader ingredients)
{
    /// <summary>An extra.</summary>
    public Extra Read(Fields fields, string id) =>
        new Extra
        {
            Id = id,
            Place = fields.Place,
            Name = fields.Text(ExtraShape.Name),
            Supplier = fields.Text(ExtraShape.Supplier),
            Purpose = fields.Text(ExtraShape.Purpose),
            Ingredients = ingredients.ReadTable(fields, required: true),
            Highest = fields.OptionalNumber(ExtraShape.HighestPercent) is { } highest ? new MassPercent(highest) : null,
            Source = NotifiedShape.ReadSource(fields),
        };
}
