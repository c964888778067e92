// Nothing of its own: what every test includes is compiled with it, for all of them (CMakeLists.txt).
int main() {}
