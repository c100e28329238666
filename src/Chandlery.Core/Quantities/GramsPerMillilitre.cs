namespace Chandlery.Core.Quantities;

/// <summary>A density in grams per millilitre.</summary>
/// <param name="Value">Grams per millilitre.</param>
public readonly record struct GramsPerMillilitre(double Value)
{
    /// <summary>The mass of a volume of this density.</summary>
    public Grams MassOf(Millilitres volume) => new(Value * volume.Value);

    /// <summary>The volume of a mass of this density.</summary>
    public Millilitres VolumeOf(Grams mass) => new(mass.Value / Value);
}
