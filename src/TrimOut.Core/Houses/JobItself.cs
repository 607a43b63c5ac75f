namespace TrimOut.Core.Houses;

/// <summary>The house as a subject of its own: its steps and dates.</summary>
public sealed class JobItself(House house) : Subject(house, house.Job);
