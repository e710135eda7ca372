namespace LogBook.Domain.Simulation;

/// <summary>A value that changes at once or in a straight line; hours since the start.</summary>
internal readonly record struct Ramp(double From, double To, double FromValue, double ToValue)
{
    public static Ramp Constant(double value) => new(0, 0, value, value);

    public double At(double hour) =>
        hour >= To ? ToValue : hour <= From ? FromValue : FromValue + ((ToValue - FromValue) * (hour - From) / (To - From));
}
