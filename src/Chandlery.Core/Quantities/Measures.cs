namespace Chandlery.Core.Quantities;

/// <summary>A mass in grams.</summary>
/// <param name="Value">Grams.</param>
public readonly record struct Grams(double Value)
{
    /// <summary>Sum of two masses.</summary>
    public static Grams operator +(Grams left, Grams right) => new(left.Value + right.Value);

    /// <inheritdoc/>
    public override string ToString() => Figures.Plain(Value) + " g";
}

/// <summary>A length in millimetres.</summary>
/// <param name="Value">Millimetres.</param>
public readonly record struct Millimetres(double Value)
{
    /// <inheritdoc/>
    public override string ToString() => Figures.Plain(Value) + " mm";
}

/// <summary>A volume in millilitres.</summary>
/// <param name="Value">Millilitres.</param>
public readonly record struct Millilitres(double Value)
{
    /// <inheritdoc/>
    public override string ToString() => Figures.Plain(Value) + " ml";
}

/// <summary>A temperature in degrees Celsius.</summary>
/// <param name="Value">Degrees Celsius.</param>
public readonly record struct Celsius(double Value)
{
    /// <inheritdoc/>
    public override string ToString() => Figures.Plain(Value) + " °C";
}

/// <summary>A density in grams per millilitre.</summary>
/// <param name="Value">Grams per millilitre.</param>
public readonly record struct GramsPerMillilitre(double Value)
{
    /// <summary>The mass of a volume of this density.</summary>
    public Grams MassOf(Millilitres volume) => new(Value * volume.Value);

    /// <summary>The volume of a mass of this density.</summary>
    public Millilitres VolumeOf(Grams mass) => new(mass.Value / Value);
}
