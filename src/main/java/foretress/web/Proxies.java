package foretress.web;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The proxies in front of us, and what may be learned from them: where a request really came from. Each proxy adds on the right whom it
 * was called by, and whatever stood there before may be forged. So the list is read from the right, for as long as the one who added
 * the entry is trusted. What cannot be read as an address ends the reading: the nearest one that was known stands.
 */
public final class Proxies {
    private static final Pattern V4 =
        Pattern.compile("(?:(?:25[0-5]|2[0-4][0-9]|1?[0-9]{1,2})\\.){3}(?:25[0-5]|2[0-4][0-9]|1?[0-9]{1,2})");
    private static final Pattern V4_AND_PORT = Pattern.compile("(" + V4.pattern() + ")(?::[0-9]{1,5})?");
    private static final Pattern V6_AND_PORT = Pattern.compile("\\[([0-9A-Fa-f:.]{2,45})](?::[0-9]{1,5})?");
    private static final Pattern V6 = Pattern.compile("[0-9A-Fa-f:.]*:[0-9A-Fa-f:.]*");
    /** More proxies than anybody has. */
    private static final int LONGEST_CHAIN = 50;

    private final List<Range> trusted;

    private record Range(byte[] begin, int bits) {
        boolean holds(byte[] address) {
            if (address.length != begin.length) {
                return false;
            }
            for (int bit = 0; bit < bits; bit++) {
                if (((address[bit / 8] ^ begin[bit / 8]) >> (7 - bit % 8) & 1) != 0) {
                    return false;
                }
            }
            return true;
        }
    }

    private Proxies(List<Range> trusted) {
        this.trusted = List.copyOf(trusted);
    }

    /**
     * @param list addresses and networks as {@code 10.0.0.0/8}, by commas; none when blank
     * @throws IllegalArgumentException naming the entry that is neither
     */
    public static Proxies of(String list) {
        return new Proxies(Stream.of(list.split(",")).map(String::strip).filter(entry -> !entry.isEmpty())
            .map(Proxies::range).toList());
    }

    private static Range range(String entry) {
        String[] parts = entry.split("/", 2);
        byte[] begin =
            address(parts[0]).map(InetAddress::getAddress).orElseThrow(() -> new IllegalArgumentException(entry));
        if (parts.length == 1) {
            return new Range(begin, begin.length * 8);
        }
        if (!parts[1].matches("[0-9]{1,3}") || Integer.parseInt(parts[1]) > begin.length * 8) {
            throw new IllegalArgumentException(entry);
        }
        return new Range(begin, Integer.parseInt(parts[1]));
    }

    /**
     * Where a request came from.
     *
     * @param peer the address that is connected to us
     * @param named what the proxies say, in the order of the header's lines: the value of {@code X-Forwarded-For} each, see {@link #fors}
     */
    public String caller(String peer, List<String> named) {
        String known = plain(peer);
        List<String> chain = entries(named);
        for (int i = chain.size() - 1; i >= 0 && trusts(known); i--) {
            Optional<String> next = node(chain.get(i));
            if (next.isEmpty()) {
                return known;
            }
            known = next.get();
        }
        return known;
    }

    private boolean trusts(String address) {
        return address(address).map(InetAddress::getAddress)
            .filter(bytes -> trusted.stream().anyMatch(range -> range.holds(bytes))).isPresent();
    }

    /** The last entries, since only those can be trusted. */
    private static List<String> entries(List<String> named) {
        List<String> all = named.stream().flatMap(line -> Stream.of(line.split(",", -1))).map(String::strip).toList();
        return all.subList(Math.max(0, all.size() - LONGEST_CHAIN), all.size());
    }

    /** The {@code for} of every element of {@code Forwarded} lines (RFC 7239), in order; an element without one is {@code unknown}. */
    public static List<String> fors(List<String> lines) {
        List<String> fors = new ArrayList<>();
        for (String line : lines) {
            for (String element : line.split(",", -1)) {
                fors.add(ofElement(element));
            }
        }
        return fors;
    }

    private static String ofElement(String element) {
        return Stream.of(element.split(";")).map(String::strip)
            .filter(pair -> pair.regionMatches(true, 0, "for=", 0, 4))
            .map(pair -> pair.substring(4).strip()).findFirst().orElse("unknown");
    }

    /** A node as a proxy names it: an address, with or without a port, in quotes or not; {@code unknown} and made-up names are none. */
    private static Optional<String> node(String entry) {
        String bare = entry.length() > 1 && entry.startsWith("\"") && entry.endsWith("\"")
            ? entry.substring(1, entry.length() - 1) : entry;
        Matcher v4 = V4_AND_PORT.matcher(bare);
        if (v4.matches()) {
            return address(v4.group(1)).map(InetAddress::getHostAddress);
        }
        Matcher v6 = V6_AND_PORT.matcher(bare);
        return address(v6.matches() ? v6.group(1) : bare).map(InetAddress::getHostAddress);
    }

    private static String plain(String peer) {
        return address(peer).map(InetAddress::getHostAddress).orElse(peer);
    }

    /** Never asks the network: only what is written as an address is looked at. An IPv4 address inside an IPv6 one is the IPv4 one. */
    private static Optional<InetAddress> address(String text) {
        String bare = text.replaceAll("%.*", "");
        if (!V4.matcher(bare).matches() && !V6.matcher(bare).matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(InetAddress.getByName(bare));
        } catch (UnknownHostException none) {
            return Optional.empty();
        }
    }
}
