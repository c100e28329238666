namespace Chandlery.Paper.Layout;

/// <summary>A column and the blocks in it.</summary>
/// <param name="Left">Left edge, millimetres.</param>
/// <param name="Right">Right edge, millimetres.</param>
/// <param name="First">Number of its first block.</param>
/// <param name="End">Number behind its last block.</param>
internal readonly record struct Column(double Left, double Right, int First, int End);
