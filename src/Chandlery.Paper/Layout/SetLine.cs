namespace Chandlery.Paper.Layout;

/// <summary>A line of a paragraph and the pieces on it.</summary>
/// <param name="First">Number of its first piece.</param>
/// <param name="Count">How many pieces.</param>
/// <param name="Left">Left end of its room, millimetres.</param>
/// <param name="Right">Right end of its room, millimetres.</param>
/// <param name="TopMm">Its upper edge.</param>
internal readonly record struct SetLine(int First, int Count, double Left, double Right, double TopMm);
