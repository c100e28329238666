namespace Chandlery.Core.Classified.Methods;

/// <summary>Takes what the walk over a rung's substances comes by.</summary>
internal interface ICounter
{
    /// <summary>Called once for each substance that counts.</summary>
    void Count(in Counted counted);
}
