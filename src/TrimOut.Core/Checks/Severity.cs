namespace TrimOut.Core.Checks;

/// <summary>How bad a finding is.</summary>
public enum Severity
{
    /// <summary>It will not work, or is not safe.</summary>
    Stop,

    /// <summary>Likely trouble.</summary>
    Caution,

    /// <summary>Worth knowing.</summary>
    Note,
}
