namespace Chandlery.Core.Asked.Ceilings;

/// <summary>What is varied.</summary>
public enum Varied
{
    /// <summary>The load of the whole oil blend.</summary>
    Load,

    /// <summary>The load of one oil, the others staying as they are.</summary>
    OneOil,

    /// <summary>One oil's share of the blend, the load staying as it is.</summary>
    BlendShare,
}
