namespace Chandlery.Core.Classified;

/// <summary>Whose word on a substance it is, from the one that goes last to the one that goes first where several say the same.</summary>
internal enum Standing
{
    /// <summary>A supplier's sheet.</summary>
    Supplier,

    /// <summary>A harmonised class that another place's law has and this one's has not yet.</summary>
    Elsewhere,

    /// <summary>A harmonised class that does not bind here.</summary>
    Evidence,

    /// <summary>A harmonised class that binds.</summary>
    Binding,
}
