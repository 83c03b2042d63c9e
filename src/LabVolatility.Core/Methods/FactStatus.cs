namespace LabVolatility.Core.Methods;

/// <summary>How well a figure is known.</summary>
public enum FactStatus
{
    /// <summary>Read in a public source.</summary>
    Published,

    /// <summary>Recalled, not read again: usable, and flagged until the laboratory confirms it.</summary>
    FromMemory,

    /// <summary>Usual in the trade, without a source that binds.</summary>
    CommonPractice,

    /// <summary>Entered and approved by the laboratory.</summary>
    Laboratory,
}
