namespace Chandlery.Core.Classified.Methods;

/// <summary>Adds up how far a rung is filled, or keeps the most that one substance fills alone.</summary>
internal struct FillingCounter(bool adds) : ICounter
{
    /// <summary>1 when the rung's limit is just reached.</summary>
    public double Filling { get; private set; }

    /// <inheritdoc/>
    public void Count(in Counted counted) => Filling = adds ? Filling + counted.Part : Math.Max(Filling, counted.Part);
}
