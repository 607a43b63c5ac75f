namespace TrimOut.Core.Facts;

/// <summary>A value that points at another item of the house.</summary>
/// <param name="Id">That item's id.</param>
public readonly record struct ItemRef(string Id);
