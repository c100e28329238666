using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Chandlery.Workbench;

/// <summary>The address under which other devices of a private network reach this machine.</summary>
internal static class NearbyAddress
{
    /// <summary>The address, or null where the machine is in no private network.</summary>
    public static IPAddress? Find() =>
        Choose(
            NetworkInterface
                .GetAllNetworkInterfaces()
                .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
                // What leads somewhere goes before what was only made for programs on this machine.
                .OrderByDescending(n => n.GetIPProperties().GatewayAddresses.Count > 0)
                .SelectMany(n => n.GetIPProperties().UnicastAddresses.Select(u => u.Address))
        );

    /// <summary>The first that only a private network leads to (RFC 1918, section 3): the page never stands open to the internet.</summary>
    public static IPAddress? Choose(IEnumerable<IPAddress> addresses) => addresses.FirstOrDefault(IsPrivate);

    private static bool IsPrivate(IPAddress address) =>
        address.AddressFamily == AddressFamily.InterNetwork
        && address.GetAddressBytes() switch
        {
            [10, ..] => true,
            [172, >= 16 and <= 31, ..] => true,
            [192, 168, ..] => true,
            _ => false,
        };
}
