package foretress.web;

/** Which network an address belongs to: an IPv4 address is its own, addresses of one IPv6 /64 are one (RFC 4291). */
public final class Network {
    private Network() {}

    public static String of(String address) {
        if (!address.contains(":")) {
            return address;
        }
        String[] groups = expanded(address).split(":");
        return String.join(":", groups[0], groups[1], groups[2], groups[3]);
    }

    /** Writes out the zeros that {@code ::} stands for, so that the first four groups can be read off. */
    private static String expanded(String address) {
        String bare = address.replaceAll("%.*", "");
        int gap = bare.indexOf("::");
        if (gap < 0) {
            return bare;
        }
        String before = bare.substring(0, gap);
        String after = bare.substring(gap + 2);
        int missing = 8 - groups(before) - groups(after);
        String zeros = ":0".repeat(Math.max(missing, 1)).substring(1);
        return (before.isEmpty() ? "" : before + ":") + zeros + (after.isEmpty() ? "" : ":" + after);
    }

    private static int groups(String part) {
        return part.isEmpty() ? 0 : part.split(":").length;
    }
}
